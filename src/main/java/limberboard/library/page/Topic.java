package limberboard.library.page;

import java.util.List;
import java.util.Map;
import limberboard.library.value.EmptyValues;

/**
 * Background reading.
 *
 * @param workings sums shown with it
 * @param figures what other pages quote of it, by name
 */
public record Topic(List<SumUse> workings, Map<String, PageFigure> figures) implements Details {
  /** Absent entries become empty ones. */
  public Topic {
    workings = EmptyValues.list(workings);
    figures = EmptyValues.map(figures);
  }

  /** A topic without sums and figures. */
  public Topic() {
    this(List.of(), Map.of());
  }

  @Override
  public Kind kind() {
    return Kind.TOPIC;
  }
}
