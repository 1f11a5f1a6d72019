package limberboard.words;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Access;

/** What has to be opened before work, in words. Stateless. */
public final class AccessWords {
  private AccessWords() {}

  /** With its minutes, in order: {@code Berth cushion (2 min); then Berth board (5 min)}. */
  public static String opened(List<Access> access) {
    return access.stream()
        .map(open -> open.title() + " (" + Minutes.words(open.minutes()) + ")")
        .collect(Collectors.joining("; then "));
  }
}
