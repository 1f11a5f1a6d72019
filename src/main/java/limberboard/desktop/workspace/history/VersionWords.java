package limberboard.desktop.workspace.history;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import limberboard.history.Version;
import limberboard.words.DayText;

/** Versions in words. */
final class VersionWords {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

  private VersionWords() {}

  /** When it was recorded, where it was recorded. */
  static String when(ZonedDateTime when) {
    return DayText.written(when.toLocalDate()) + ", " + TIME.format(when);
  }

  /** When, who, and what was said. */
  static String which(Version version) {
    return when(version.when()) + ", " + version.who() + ": " + version.said();
  }
}
