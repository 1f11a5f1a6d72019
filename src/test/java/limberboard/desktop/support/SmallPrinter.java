package limberboard.desktop.support;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.read.Printing;

/** A printer that keeps what is printed. */
public final class SmallPrinter implements Printing {
  private final List<Job> jobs = Collections.synchronizedList(new ArrayList<>());
  private volatile boolean there = true;
  private volatile boolean wanted = true;

  /**
   * Something that was printed.
   *
   * @param name what it was called
   * @param pdf its sheets
   */
  public record Job(String name, byte[] pdf) {}

  /** From now on there is no printer. */
  public void takeAway() {
    there = false;
  }

  /** From now on whoever is asked does not want to print. */
  public void refuse() {
    wanted = false;
  }

  /** What was printed. */
  public List<Job> jobs() {
    return List.copyOf(jobs);
  }

  @Override
  public boolean hasPrinter() {
    return there;
  }

  @Override
  public Optional<Order> ask(String name) {
    return wanted ? Optional.of(pdf -> jobs.add(new Job(name, pdf))) : Optional.empty();
  }
}
