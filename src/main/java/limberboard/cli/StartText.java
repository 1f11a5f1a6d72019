package limberboard.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.WorkCaution;
import limberboard.library.Library;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.value.Consequence;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Due;
import limberboard.upkeep.start.Start;
import limberboard.upkeep.start.StartAnswer;
import limberboard.upkeep.start.StartQuestion;
import limberboard.words.CountWords;
import limberboard.words.DayText;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * Says in a terminal what a start asks and what comes of it.
 *
 * @param out where to
 * @param start the start
 */
record StartText(PrintWriter out, Start start) {
  private static final int EXAMPLE_HOURS = 16;

  /** What it is about, before the first question. */
  void begin(int questions) {
    Boat boat = start.upkeep().fitting().boat();
    String day = boat.bought().map(DayText::written).orElse("");
    out.println(boat.name() + ", " + boat.particulars() + ", bought on " + day);
    out.println(
        CountWords.of(questions, "question")
            + " about what is not in her log, what can hurt most first. Say how it is known, and"
            + " when it was last done:");
    out.println("  survey 12 Sep 2026   bill May 2024   said 2023   seen 3.10.2026");
    out.println(
        "A month or a year is enough. Enter or ? where nobody knows; none where there is no such"
            + " thing aboard;");
    out.println(
        "It goes by what is fitted, also later: put right equipment in her boat.yaml first.");
    out.println(
        "each to go through it one by one; back; done to leave the rest; stop to drop all.");
  }

  /** A question. */
  void question(StartQuestion question, int number, int of) {
    out.println();
    out.println(
        number + " of " + of + "  " + question.title() + ": " + question.consequence().said());
    works("To look at", question, true);
    works(question.looks() > 0 ? "Not told by a survey" : "To do", question, false);
  }

  private void works(String what, StartQuestion question, boolean looks) {
    String titles =
        question.works().stream()
            .filter(due -> due.isLook() == looks)
            .map(due -> due.work().title())
            .collect(Collectors.joining("; "));
    if (!titles.isEmpty()) {
      out.println("    " + what + ": " + titles);
    }
  }

  /** What was written. */
  void written(List<LogEntry> lines, Library library) {
    out.println();
    out.println(
        lines.isEmpty()
            ? "Nothing is known, so nothing was written into the log."
            : "Written into the log: "
                + CountWords.of(lines.size(), "line")
                + "; start --undo takes them out again");
    for (LogEntry line : lines) {
      out.println(
          "  "
              + line.day()
              + "  "
              + library.procedure(line.work()).map(Page::title).orElse(line.work())
              + line.known().map(how -> ", " + how.from().sentence()).orElse(""));
    }
  }

  /** What is to be put right in the boat's file. */
  void notAboard(Map<String, StartAnswer> answers) {
    for (StartQuestion question : start.questions()) {
      for (Due due : question.works()) {
        boolean single = answers.get(due.work().id()) instanceof StartAnswer.NotAboard;
        if (single || answers.get(question.id()) instanceof StartAnswer.NotAboard) {
          out.println(notAboard(due));
        }
      }
    }
  }

  private String notAboard(Due due) {
    List<Equipment> equipment = start.equipment(due.work());
    String what =
        equipment.isEmpty()
            ? "it is for every boat of her kind and cannot be chosen away"
            : "put right what is fitted, in her boat.yaml under equipment: "
                + equipment.stream()
                    .map(
                        each ->
                            each.id()
                                + " (one of "
                                + each.choices().stream()
                                    .map(choice -> choice.id())
                                    .collect(Collectors.joining(", "))
                                + ")")
                    .collect(Collectors.joining("; "));
    return "Not aboard, " + due.work().title() + ": " + what;
  }

  /** What is not known now, the gravest first, and how to plan it. */
  void left() {
    List<Due> lines =
        start.upkeep().of(Due.Group.NOT_KNOWN).stream()
            .filter(due -> due.round().isEmpty())
            .toList();
    out.println();
    if (lines.isEmpty()) {
      out.println("Nothing is left that nobody knows.");
      return;
    }
    List<Due> all = start.upkeep().of(Due.Group.NOT_KNOWN);
    int minutes = all.stream().mapToInt(Due::ownerMinutes).sum();
    out.println(
        "Not known: look first ("
            + CountWords.of(lines.size(), "line")
            + "; "
            + Minutes.forWhom(minutes)
            + ")");
    cautions(all);
    Consequence before = null;
    for (Due due : lines) {
      if (due.consequence() != before) {
        before = due.consequence();
        out.println("  " + Sentences.capital(before.said()) + ":");
      }
      out.println("    " + due.title() + " (" + Minutes.words(minutes(due)) + ")");
    }
    AfloatSeason season = start.upkeep().seasons().around(start.upkeep().fitting().on());
    LocalDate until =
        season.from().isAfter(start.upkeep().fitting().on())
            ? season.from().minusDays(1)
            : season.to();
    out.println(
        "To plan it: limberboard plan --boat "
            + start.upkeep().fitting().boat().id()
            + " --hours "
            + EXAMPLE_HOURS
            + " --until "
            + until);
  }

  private static int minutes(Due due) {
    return due.all().stream().mapToInt(Due::ownerMinutes).sum();
  }

  private void cautions(List<Due> all) {
    String titles =
        all.stream()
            .flatMap(due -> start.upkeep().cautions(due.work()).stream())
            .map(WorkCaution::title)
            .distinct()
            .collect(Collectors.joining("; "));
    if (!titles.isEmpty()) {
      out.println("Cautions: " + titles + ". Each page says what to do before its steps.");
    }
  }
}
