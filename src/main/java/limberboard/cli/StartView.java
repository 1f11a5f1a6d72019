package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.WorkCaution;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start;
import limberboard.upkeep.start.StartQuestion;

/** What {@code start --json} prints; the keys are documented and stay. */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record StartView(
    String boat, String bought, Optional<List<Line>> written, List<Question> questions) {

  /** A line of the log. */
  record Line(String date, String work, String knownBy, String day) {
    static Line of(LogEntry entry) {
      return new Line(
          entry.date().toString(),
          entry.work(),
          entry.known().map(how -> how.from().word()).orElse(""),
          entry.day());
    }

    static List<Line> all(List<LogEntry> entries) {
      return entries.stream().map(Line::of).toList();
    }
  }

  /** A question that is open. */
  record Question(String id, String title, String leftUndone, List<Item> works) {
    static Question of(StartQuestion question, Upkeep upkeep) {
      return new Question(
          question.id(),
          question.title(),
          question.consequence().word(),
          question.works().stream().map(due -> Item.of(due, upkeep)).toList());
    }
  }

  /** A piece of work that is asked about. */
  record Item(
      String page,
      String title,
      String work,
      String leftUndone,
      String need,
      String why,
      List<String> cautions) {
    static Item of(Due due, Upkeep upkeep) {
      return new Item(
          due.work().id(),
          due.title(),
          due.work().details().work().word(),
          due.ownConsequence().word(),
          due.ownNeed().word(),
          due.why().said(),
          upkeep.cautions(due.work()).stream().map(WorkCaution::id).toList());
    }
  }

  static StartView of(Start start, Optional<List<LogEntry>> written) {
    Boat boat = start.upkeep().fitting().boat();
    return new StartView(
        boat.id(),
        boat.bought().map(Object::toString).orElse(""),
        written.map(Line::all),
        start.questions().stream().map(question -> Question.of(question, start.upkeep())).toList());
  }
}
