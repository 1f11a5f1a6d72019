package limberboard.print.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Model.Zone;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Why;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListPart;
import limberboard.words.AccessWords;
import limberboard.words.CountWords;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.SkillWords;

/** Lists of work, in words. */
public final class ListWords {
  private ListWords() {}

  /** What a list is called. */
  public static String title(ListKind kind) {
    return switch (kind) {
      case FITTING_OUT -> "Fitting out";
      case LAYING_UP -> "Laying up";
    };
  }

  /** What a part is called. */
  public static String title(Phase phase) {
    return switch (phase) {
      case ASHORE_MAST_DOWN -> "Ashore, mast down";
      case ASHORE_MAST_UP -> "Ashore, mast up";
      case AFLOAT -> "After launching";
      case UNDER_SAIL -> "Under sail";
      case LAY_UP -> "At lay-up";
    };
  }

  /** How much a part is: its lines and minutes. */
  static String sum(ListPart part) {
    return sum(part.lines().size(), part.workMinutes(), part.accessMinutes());
  }

  /** So many lines, with the minutes of work and of access apart. */
  static String sum(int lines, double work, double access) {
    String count = CountWords.of(lines, "line");
    return access == 0
        ? count + ", " + Minutes.forWhom(work)
        : count
            + ", "
            + Minutes.words(work)
            + " of work and "
            + Minutes.words(access)
            + " of opening and closing: "
            + Minutes.forWhom(work + access);
  }

  /** What there is to know of a line: minutes, place, who, by when. */
  public static List<String> facts(ListLine line, LocalDate on) {
    List<String> facts = new ArrayList<>();
    facts.add(
        Stream.of(
                Optional.of(Minutes.words(line.minutes())),
                line.zone().map(Zone::title),
                Optional.of(line.work().details().skill())
                    .filter(skill -> skill != Skill.OWNER)
                    .map(SkillWords::brief))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(" · ")));
    if (!line.task().with().isEmpty()) {
      facts.add(
          "With it: "
              + line.task().with().stream()
                  .map(each -> each.work().title() + " (" + Minutes.words(each.minutes()) + ")")
                  .collect(Collectors.joining("; ")));
    }
    line.task()
        .due()
        .map(day -> (day.isBefore(on) ? "Overdue since " : "Due ") + DayWords.of(day))
        .ifPresent(facts::add);
    if (line.task().why() instanceof Why.NotKnown) {
      facts.add("Not known when last done");
    }
    line.moved()
        .ifPresent(moved -> facts.add("Only now, since “" + moved.after() + "” comes before it"));
    return facts;
  }

  /** What is opened before a line, or nothing. */
  static String open(ListLine line) {
    return line.open().isEmpty() ? "" : "Open: " + AccessWords.opened(line.open());
  }

  /** What is closed after a line, or nothing. */
  static String close(ListLine line) {
    return line.close().isEmpty() ? "" : "Put back: " + closed(line);
  }

  /** The accesses closed after a line. */
  static String closed(ListLine line) {
    return line.close().stream().map(Access::title).collect(Collectors.joining("; then "));
  }
}
