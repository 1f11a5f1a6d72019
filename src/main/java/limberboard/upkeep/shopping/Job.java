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
 * @param lookFirst whether nobody knows when it was last done, so that a look or a question may
 *     show that it need not be done and nothing bought
 */
public record Job(Page<Procedure> work, int times, LocalDate day, boolean lookFirst)
    implements BoughtFor {
  /** Work that is done at least once. */
  public Job {
    if (times < 1) {
      throw new IllegalArgumentException("work is done at least once, not " + times + " times");
    }
  }

  /** Work that is done whatever was done before. */
  public Job(Page<Procedure> work, int times, LocalDate day) {
    this(work, times, day, false);
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
