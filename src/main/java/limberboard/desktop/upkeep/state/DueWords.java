package limberboard.desktop.upkeep.state;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Due;
import limberboard.upkeep.WhenDue;
import limberboard.words.DayText;
import limberboard.words.Minutes;
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
    return new WhenDue(due, on).state(DayText::written);
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
    return new WhenDue(due, on).plan(DayText::written);
  }

  /** How long it takes and who does it; of what somebody else does, by when to book it. */
  String effort(Due due) {
    String who =
        Appointed.of(due, on)
            .map(each -> "your own time; done by " + each.withWhomAndWhen(DayText::written))
            .orElseGet(() -> SkillWords.of(due.skill()));
    return Minutes.words(due.ownerMinutes())
        + (due.round().isPresent() ? " within the round, " : ", ")
        + who;
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
