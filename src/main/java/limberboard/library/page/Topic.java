package limberboard.library.page;

import java.util.List;
import limberboard.library.value.EmptyValues;

/**
 * Background reading.
 *
 * @param workings sums shown with it
 */
public record Topic(List<SumUse> workings) implements Details {
  /** Absent entries become empty ones. */
  public Topic {
    workings = EmptyValues.list(workings);
  }

  /** A topic without sums. */
  public Topic() {
    this(List.of());
  }

  @Override
  public Kind kind() {
    return Kind.TOPIC;
  }
}
