package limberboard.letters.next;

import limberboard.letters.mail.Letter;

/**
 * A letter's own words.
 *
 * @param name its file's name
 * @param text its subject, a blank line, and what its writer said
 */
public record NamedText(String name, String text) {
  /** The words of a letter. */
  public static NamedText of(String name, Letter letter) {
    return new NamedText(name, letter.head().subject() + "\n\n" + letter.own());
  }

  /** The first line that says anything. */
  String title() {
    return text.lines().map(String::strip).filter(line -> !line.isEmpty()).findFirst().orElse(name);
  }
}
