package limberboard.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import limberboard.history.PageHistory;
import limberboard.history.Version;
import limberboard.history.parts.Differences;
import limberboard.words.DayText;

/**
 * What {@code history PAGE} prints.
 *
 * @param path the page's file
 * @param unrecorded whether the file has changes that are not recorded
 * @param versions its versions, the latest first
 */
record HistoryView(String path, boolean unrecorded, List<One> versions) {

  /** One version. */
  record One(
      String version, String who, String when, String said, String path, List<String> changes) {
    static One of(Version version, List<String> changes) {
      return new One(
          version.shortId(),
          version.who(),
          version.when().toOffsetDateTime().toString(),
          version.said(),
          version.path(),
          changes);
    }
  }

  /** What {@code --begin} and {@code --record} print. */
  record Recorded(boolean recorded, int files) {}

  /** What {@code history} alone prints. */
  record Unrecorded(List<String> unrecorded) {}

  /** What {@code --on} prints. */
  record Text(String path, One version, String text) {}

  /** What {@code --changes} and {@code --since} print. */
  record Compared(String path, One version, List<Differences.Differing> differences) {}

  static HistoryView of(
      PageHistory history, String path, List<Version> versions, boolean unrecorded, int limit)
      throws IOException {
    List<One> all = new ArrayList<>();
    for (int i = 0; i < Math.min(limit, versions.size()); i++) {
      all.add(One.of(versions.get(i), history.changes(versions, i)));
    }
    return new HistoryView(path, unrecorded, all);
  }

  /** Where a part lies, for a reader. */
  static String where(Differences.Differing part) {
    if (!part.key().isEmpty()) {
      return "Header, " + part.key() + ":";
    }
    return part.heading().isEmpty() ? "Text:" : "Below “" + part.heading() + "”:";
  }

  String text() {
    String end = System.lineSeparator();
    String first = unrecorded ? path + " has changes that are not recorded yet." + end : "";
    return first
        + (versions.isEmpty()
            ? "No version of " + path + " is recorded yet."
            : versions.stream().map(HistoryView::lines).collect(Collectors.joining(end)));
  }

  private static String lines(One one) {
    return one.version()
        + "  "
        + DayText.written(java.time.OffsetDateTime.parse(one.when()).toLocalDate())
        + "  "
        + one.who()
        + ": "
        + one.said()
        + one.changes().stream()
            .map(change -> System.lineSeparator() + "    " + change)
            .collect(Collectors.joining());
  }
}
