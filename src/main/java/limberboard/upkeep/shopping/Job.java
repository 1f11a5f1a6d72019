package limberboard.upkeep.shopping;

import java.time.LocalDate;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;

/**
 * Work that materials are bought for.
 *
 * @param work the procedure's page
 * @param times how often it is done, at least 1
 * @param day the day its materials are needed
 */
public record Job(Page<Procedure> work, int times, LocalDate day) implements BoughtFor {
  /** Work that is done at least once. */
  public Job {
    if (times < 1) {
      throw new IllegalArgumentException("work is done at least once, not " + times + " times");
    }
  }

  @Override
  public String id() {
    return work.id();
  }

  @Override
  public String title() {
    return work.title();
  }
}
