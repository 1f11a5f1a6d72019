package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Check;

/**
 * What somebody asks a trace to be: a symptom, perhaps a boat, and what has been found.
 *
 * @param symptom symptom id
 * @param boat boat id
 * @param found answers, in order
 */
record TraceRequest(String symptom, Optional<String> boat, List<Found> found) {
  /** The answer that says that a check cannot be told. */
  static final String CANT_TELL = "?";

  /** Said of a cause: its mend was made and did not cure. */
  static final String NOT_CURED = "not-cured";

  /** Said of a check that comes first: what it asks for has been made safe. */
  static final String MADE_SAFE = Check.MADE_SAFE;

  private static final String BOAT = "boat";

  /**
   * An answer to a check, {@link #CANT_TELL} or {@link #MADE_SAFE}; or a cause with {@link
   * #NOT_CURED}.
   *
   * @param check check id, or cause id
   * @param answer answer
   */
  record Found(String check, String answer) {
    /** Reads {@code check=answer}. */
    static Found parse(String text) {
      int equals = text.indexOf('=');
      if (equals < 1 || equals == text.length() - 1) {
        throw new Failure(
            ExitCode.USAGE, "\"" + text + "\" is no answer; write check=answer, or check=?");
      }
      return new Found(text.substring(0, equals), text.substring(equals + 1));
    }
  }

  /** Reads a line of standard input: {@code SYMPTOM [boat=BOAT] [check=answer …]}. */
  static TraceRequest parse(String line, Optional<String> usualBoat) {
    String[] words = line.strip().split("\\s+");
    Optional<String> boat = usualBoat;
    List<Found> found = new ArrayList<>();
    for (int i = 1; i < words.length; i++) {
      Found each = Found.parse(words[i]);
      if (each.check().equals(BOAT)) {
        boat = Optional.of(each.answer());
      } else {
        found.add(each);
      }
    }
    return new TraceRequest(words[0], boat, found);
  }
}
