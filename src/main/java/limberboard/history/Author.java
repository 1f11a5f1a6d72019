package limberboard.history;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who records a change.
 *
 * @param name the name, as it stands in the history
 * @param mail the address, as it stands in the history; may be empty
 */
public record Author(String name, String mail) {
  private static final Pattern WRITTEN = Pattern.compile("\\s*([^<>\\n]*?)\\s*<([^<>\\s]*)>\\s*");

  /** Reads {@code NAME <ADDRESS>}, or a name alone; empty when there is no name. */
  public static Optional<Author> read(String text) {
    Matcher matcher = WRITTEN.matcher(text);
    if (matcher.matches()) {
      return matcher.group(1).isEmpty()
          ? Optional.empty()
          : Optional.of(new Author(matcher.group(1), matcher.group(2)));
    }
    boolean name = !text.isBlank() && text.chars().noneMatch(c -> c < ' ' || c == '<' || c == '>');
    return name ? Optional.of(new Author(text.strip(), "")) : Optional.empty();
  }
}
