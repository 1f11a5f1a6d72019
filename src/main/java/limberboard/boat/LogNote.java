package limberboard.boat;

import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;

/**
 * A note as the log has it: any text up to 10,000 characters, also of several lines, without blanks
 * around it and without control characters.
 */
public final class LogNote {
  /** How many characters a note may have. */
  public static final int LONGEST = 10_000;

  private LogNote() {}

  /** Reads a note that is to be written; every line end in it becomes {@code \n}. */
  public static Typed<String> read(String text) {
    String note = plain(text);
    if (note.length() > LONGEST) {
      return new Typed.Bad<>(
          "is " + note.length() + " characters long", "keep it under " + LONGEST + " characters");
    }
    CharsetEncoder encoder = StandardCharsets.UTF_8.newEncoder();
    boolean controls =
        note.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\t');
    return controls || !encoder.canEncode(note)
        ? new Typed.Bad<>("holds characters that cannot be printed", "take them out")
        : new Typed.Good<>(note);
  }

  /**
   * The note as it is read from a file. Nothing in it is refused there: a line that says what was
   * done is not left out for the sake of its note.
   */
  static String plain(String text) {
    return text.replace("\r\n", "\n").replace('\r', '\n').strip();
  }
}
