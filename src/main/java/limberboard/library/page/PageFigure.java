package limberboard.library.page;

import java.util.Optional;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.FigureValue;

/**
 * A figure that stands once, on the page of a material or a topic, and that other pages quote.
 *
 * @param title what it is, or empty
 * @param value the figure; empty where the page has none that can be read
 * @param at under what it holds, such as a temperature or a surface, or empty
 * @param source where it comes from, or empty
 */
public record PageFigure(String title, Optional<FigureValue> value, String at, String source) {
  /** Absent entries become empty ones. */
  public PageFigure {
    title = EmptyValues.text(title);
    value = EmptyValues.optional(value);
    at = EmptyValues.text(at);
    source = EmptyValues.text(source);
  }

  /**
   * What is to stand where a page quotes it with other words than its own.
   *
   * @param written what the page says, or nothing
   * @return the value's own words; empty where the page says the same, also in another unit or in
   *     words, and where it says something that this figure cannot stand for
   */
  public Optional<String> inPlaceOf(String written) {
    Optional<FigureValue> said = FigureValue.in(written);
    return value
        .filter(
            now ->
                written.isBlank()
                    || said.filter(is -> now.isLike(is) && !now.equalTo(is)).isPresent())
        .map(FigureValue::written);
  }
}
