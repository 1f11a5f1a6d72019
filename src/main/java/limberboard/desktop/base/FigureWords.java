package limberboard.desktop.base;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Skill;
import limberboard.trace.RankedCause;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** Numbers and facts of a trace in words. */
public final class FigureWords {
  private FigureWords() {}

  /** A chance in per cent, as everything says it: see {@link PerCent}. */
  public static String percent(double chance) {
    return PerCent.words(chance);
  }

  /** A chance in words, and what it was before the last answer when that was another one. */
  public static String chance(RankedCause ranked) {
    String word = capital(ranked.word());
    String before = percent(ranked.before());
    return before.equals(percent(ranked.chance())) ? word : word + ", was " + before;
  }

  /** A text with a capital at its beginning. */
  public static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** An answer as a person reads it. */
  public static String answer(String answer) {
    return capital(answer.replace('-', ' '));
  }

  /** What must be opened first. */
  public static String access(List<Access> access) {
    return access.stream()
        .map(open -> open.title() + " (" + Minutes.words(open.minutes()) + ")")
        .collect(Collectors.joining(", then "));
  }

  /** Who may do it. */
  public static String who(Skill skill) {
    return switch (skill) {
      case OWNER -> "any owner";
      case HANDY -> "an owner used to tools";
      case YARD -> "the yard";
      case LICENSED -> "somebody licensed for this work";
    };
  }
}
