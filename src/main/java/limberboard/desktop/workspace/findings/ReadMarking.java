package limberboard.desktop.workspace.findings;

import java.time.LocalDate;
import limberboard.desktop.base.Notices;
import limberboard.findings.FullReading;

/**
 * Notes in pages that they were read in full today, and takes such a note back. For the event
 * thread only; files are written in the background.
 */
final class ReadMarking {
  private static final String KEY = "reader";
  private final FindingsOutside outside;

  ReadMarking(FindingsOutside outside) {
    this.outside = outside;
  }

  /** What kind of reader read a page last; empty text when nobody has yet. */
  String lastReader() {
    return outside.memory().text(KEY).orElse("");
  }

  /**
   * Notes it.
   *
   * @param file the page's file, relative to the workspace
   * @param title its title
   * @param by what kind of reader
   */
  void mark(String file, String title, String by) {
    outside.memory().remember(KEY, by);
    LocalDate today = outside.session().today();
    FullReading reading = new FullReading(outside.folders(), file);
    outside
        .writing()
        .run(
            "Writing that a page was read",
            () -> {
              outside.guard().begins("noting that a page was read");
              return reading.note(today, by);
            },
            outcome -> marked(reading, title, outcome));
  }

  private void marked(FullReading reading, String title, FullReading.Outcome outcome) {
    if (outcome instanceof FullReading.Noted noted) {
      outside
          .notices()
          .tell(
              "“" + title + "” is noted as read in full today.",
              new Notices.Offer("Take it back", () -> takeBack(reading, noted)));
      outside.changed().run();
    } else if (outcome instanceof FullReading.Refused refused) {
      outside.notices().warn("Not noted: " + reading.file() + " " + refused.why() + ".");
    }
  }

  private void takeBack(FullReading reading, FullReading.Noted noted) {
    outside.notices().dismiss();
    outside
        .writing()
        .run(
            "Writing that a page was not read",
            () -> {
              outside.guard().begins("taking a note back");
              return reading.takeBack(noted);
            },
            done -> {
              if (!done) {
                outside
                    .notices()
                    .warn(reading.file() + " has changed since; its header still says so.");
              }
              outside.changed().run();
            });
  }
}
