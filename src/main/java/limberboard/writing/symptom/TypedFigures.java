package limberboard.writing.symptom;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as people type them. */
final class TypedFigures {
  private static final Pattern PLAIN = Pattern.compile("[0-9]{1,9}(?:\\.[0-9]{1,9})?");

  private TypedFigures() {}

  /** A number greater than 0; empty when the text is none. */
  static OptionalDouble positive(String text) {
    String plain = text.strip().replaceFirst("^\\.", "0.");
    double value = PLAIN.matcher(plain).matches() ? Double.parseDouble(plain) : 0;
    return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
