package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/**
 * One danger and what to do about it, quoted by procedures, checks and symptoms.
 *
 * @param danger what can hurt whom
 * @param lines what to do, most important first (key {@code do})
 * @param seek who or what comes before this page, or empty
 * @param brief the danger and the one rule that matters, in two lines (key {@code short}); what
 *     stands in its place where it is missing is {@link #shortDanger} and {@link #shortRule}
 * @param grave whether it is a danger that kills
 * @param emergency whether it may be an emergency where a symptom names it before any question
 * @param bites words or phrases of a step at which it bites
 */
public record Caution(
    @Required String danger,
    @Required @JsonProperty("do") List<Line> lines,
    String seek,
    @JsonProperty("short") Optional<Brief> brief,
    boolean grave,
    boolean emergency,
    List<String> bites)
    implements Details {
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+");

  /** The most characters that the danger and the rule of a {@link Brief} have together. */
  public static final int BRIEF_CHARACTERS = 150;

  /** Absent entries become empty ones. */
  public Caution {
    lines = lines == null ? null : EmptyValues.list(lines);
    seek = EmptyValues.text(seek);
    brief = EmptyValues.optional(brief);
    bites = EmptyValues.list(bites);
  }

  /**
   * One thing to do; written as its sentence alone or as {@code {say: …, fits: {…}}}.
   *
   * @param say the sentence
   * @param fits which boats it is for
   */
  public record Line(@Required String say, Condition fits) {
    /** Absent entries become empty ones. */
    public Line {
      fits = EmptyValues.condition(fits);
    }

    /** A line for every boat. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public static Line always(String say) {
      return new Line(say, Condition.ALWAYS);
    }
  }

  /**
   * A caution in two lines. Of each, the first that is for the boat stands.
   *
   * @param danger what can hurt whom, in a few words
   * @param rule the one rule that matters
   */
  public record Brief(@Required List<Line> danger, @Required List<Line> rule) {
    /** Absent entries become empty ones. */
    public Brief {
      danger = danger == null ? null : EmptyValues.list(danger);
      rule = rule == null ? null : EmptyValues.list(rule);
    }

    private Brief cutTo(Predicate<Condition> fits) {
      return new Brief(first(danger, fits), first(rule, fits));
    }

    private static List<Line> first(List<Line> lines, Predicate<Condition> fits) {
      List<Line> kept = lines.stream().filter(line -> fits.test(line.fits())).limit(1).toList();
      return kept.isEmpty() ? lines : kept;
    }
  }

  /** What to do, in sentences, most important first. */
  public List<String> act() {
    return lines.stream().map(Line::say).toList();
  }

  /** The danger in a few words; where the page has none, the danger's first sentence. */
  public String shortDanger() {
    return brief
        .flatMap(two -> two.danger().stream().findFirst())
        .map(Line::say)
        .orElseGet(() -> SENTENCE.split(danger, 2)[0]);
  }

  /** The one rule that matters; where the page has none, the first line of what to do. */
  public String shortRule() {
    return brief
        .flatMap(two -> two.rule().stream().findFirst())
        .or(() -> lines.stream().findFirst())
        .map(Line::say)
        .orElse("");
  }

  /**
   * The same with only those lines that are for a boat. The danger stays, and so does everything
   * when no line is for the boat: somebody may have mistaken the boat, and nobody is left without.
   *
   * @param fits whether a condition holds for the boat
   */
  public Caution cutTo(Predicate<Condition> fits) {
    List<Line> kept = lines.stream().filter(line -> fits.test(line.fits())).toList();
    return new Caution(
        danger,
        kept.isEmpty() ? lines : kept,
        seek,
        brief.map(two -> two.cutTo(fits)),
        grave,
        emergency,
        bites);
  }

  @Override
  public Kind kind() {
    return Kind.CAUTION;
  }
}
