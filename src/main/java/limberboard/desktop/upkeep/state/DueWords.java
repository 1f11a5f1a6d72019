package limberboard.desktop.upkeep.state;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Due;
import limberboard.words.DayText;
import limberboard.words.Minutes;
import limberboard.words.OutsiderWords;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/**
 * What is due, in words.
 *
 * @param on the day asked about
 */
public record DueWords(LocalDate on) {

  /** When it runs out: {@code Was due by 12 March 2026}. */
  public String state(Due due) {
    if (due.lastDay().isEmpty()) {
      return due.isKnown() ? "No day known" : "Not known";
    }
    LocalDate day = due.lastDay().get();
    String about = due.estimated() ? "about " : "";
    if (day.isEqual(on)) {
      return "Due today";
    }
    return (day.isBefore(on) ? "Was due by " : "Due by ") + about + DayText.written(day);
  }

  /** The reason, as a sentence. */
  public String why(Due due) {
    return Sentences.capital(due.matters())
        + ". "
        + Sentences.capital(due.why().said(DayText::written))
        + ".";
  }

  /** When to do it, and in which part of the year. */
  public String plan(Due due) {
    String where = due.phase().map(phase -> ", " + PhaseWords.of(phase)).orElse("");
    return due.plan().isAfter(on)
        ? "Plan it for " + DayText.written(due.plan()) + where
        : "Do it now" + where;
  }

  /** How long it takes and who does it; of what somebody else does, by when to book it. */
  String effort(Due due) {
    String who =
        Appointed.of(due, on)
            .map(this::bookedWith)
            .orElseGet(() -> SkillWords.of(due.work().details().skill()));
    return Minutes.words(due.ownerMinutes())
        + (due.round().isPresent() ? " within the round, " : ", ")
        + who;
  }

  private String bookedWith(Appointed each) {
    String by = each.book().isAfter(on) ? "book by " + DayText.written(each.book()) : "book now";
    return "your own time; done by " + OutsiderWords.of(each.with().with()) + ", " + by;
  }

  /** How much it is needed, for choosing. */
  public static String need(Optional<Need> need) {
    return need.map(known -> Sentences.capital(known.spoken())).orElse("However needed");
  }

  /** Whose work it is, for choosing. */
  public static String who(Optional<Skill> skill) {
    return skill.map(SkillWords::whose).map(Sentences::capital).orElse("For anybody");
  }

  /** Which part of the year, for choosing. */
  public static String when(Optional<Phase> phase) {
    return phase
        .map(known -> Sentences.capital(PhaseWords.of(known)).replace(" with the", ","))
        .orElse("All year");
  }
}
