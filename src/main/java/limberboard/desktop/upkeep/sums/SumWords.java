package limberboard.desktop.upkeep.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.workings.sums.Input;

/** What the form of a sum says. */
final class SumWords {
  private SumWords() {}

  /** Where the value of a field comes from, and what may be put in. */
  static String hint(Input input, SumForm form, Optional<String> boat) {
    List<String> parts = new ArrayList<>();
    if (form.origin(input) == SumForm.Origin.BOAT) {
      parts.add(boat.map(name -> "As " + name + " has it.").orElse("The boat’s own."));
    }
    if (input instanceof Input.Number number) {
      if (number.usual().isEmpty() && form.text(input).isBlank()) {
        parts.add("May be left empty.");
      }
      parts.add("From " + number.allowedText() + ".");
      if (!number.sound().equals(number.allowed())) {
        parts.add("Known to hold from " + number.soundText() + ".");
      }
    }
    return joined(String.join(" ", parts));
  }

  /** A number and its unit stay on one line. */
  private static String joined(String text) {
    return text.replaceAll("(\\d) ", "$1\u00a0");
  }
}
