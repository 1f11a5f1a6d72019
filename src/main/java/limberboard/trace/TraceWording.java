package limberboard.trace;

import java.util.List;
import limberboard.library.page.Model.Access;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** Numbers and names as a person reads them. */
final class TraceWording {
  private static final List<String> TIMES =
      List.of(
          "twice",
          "three times",
          "four times",
          "five times",
          "six times",
          "seven times",
          "eight times",
          "nine times",
          "ten times");

  private TraceWording() {}

  /** An id or answer of the files with spaces for hyphens. */
  static String spoken(String id) {
    return id.replace('-', ' ');
  }

  /** In typographic quotation marks. */
  static String quoted(String text) {
    return "“" + text + "”";
  }

  /** "12 %", "under 1 %", "over 99 %". */
  static String percent(double chance) {
    return PerCent.words(chance);
  }

  /** "three times as likely", for a factor of at least 1.75. */
  static String times(double factor) {
    long whole = Math.round(factor);
    return (whole > TIMES.size() + 1
            ? "more than ten times"
            : TIMES.get((int) Math.max(0, whole - 2)))
        + " as likely";
  }

  /** "3 min", or "23 min with what has to be opened first (…)". */
  static String cost(double minutes, List<Access> toOpen) {
    return toOpen.isEmpty()
        ? Minutes.words(minutes)
        : Minutes.words(minutes)
            + " with what has to be opened first ("
            + String.join("; ", toOpen.stream().map(Access::title).toList())
            + ")";
  }
}
