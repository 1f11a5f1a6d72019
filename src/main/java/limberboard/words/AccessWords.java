package limberboard.words;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Access;

/** What has to be opened before work, in words. Stateless. */
public final class AccessWords {
  private AccessWords() {}

  /** One with its minutes: {@code Berth cushion (2 min)}. */
  public static String of(Access access) {
    return access.title() + " (" + Minutes.words(access.minutes()) + ")";
  }

  /** With its minutes, in order: {@code Berth cushion (2 min); then Berth board (5 min)}. */
  public static String opened(List<Access> access) {
    return access.stream().map(AccessWords::of).collect(Collectors.joining("; then "));
  }
}
