package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.upkeep.Due;

/** What {@code done --json} prints; the keys are documented and stay. */
record DoneView(
    String boat,
    boolean takenOut,
    String date,
    String work,
    Optional<String> of,
    List<String> with,
    List<NextView> next,
    List<String> questions) {

  /** Work that is due now that the log has changed. */
  record NextView(String id, String title, Optional<String> runsOut, String why) {
    static NextView of(Due due) {
      return new NextView(
          due.id(), due.title(), due.lastDay().map(Object::toString), due.why().said());
    }
  }

  static DoneView of(
      Boat boat,
      LogEntry entry,
      List<LogEntry> with,
      boolean takenOut,
      List<Due> next,
      List<String> questions) {
    return new DoneView(
        boat.id(),
        takenOut,
        entry.date().toString(),
        entry.work(),
        entry.of(),
        with.stream().map(LogEntry::work).toList(),
        next.stream().map(NextView::of).toList(),
        questions);
  }
}
