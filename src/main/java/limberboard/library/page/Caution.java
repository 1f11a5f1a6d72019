package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.function.Predicate;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/**
 * One danger and what to do about it, quoted by procedures, checks and symptoms.
 *
 * @param danger what can hurt whom
 * @param lines what to do, most important first (key {@code do})
 * @param seek who or what comes before this page, or empty
 */
public record Caution(
    @Required String danger, @Required @JsonProperty("do") List<Line> lines, String seek)
    implements Details {

  /** Absent entries become empty ones. */
  public Caution {
    lines = lines == null ? null : EmptyValues.list(lines);
    seek = EmptyValues.text(seek);
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

  /** What to do, in sentences, most important first. */
  public List<String> act() {
    return lines.stream().map(Line::say).toList();
  }

  /**
   * The same with only those lines that are for a boat. The danger stays, and so does everything
   * when no line is for the boat: somebody may have mistaken the boat, and nobody is left without.
   *
   * @param fits whether a condition holds for the boat
   */
  public Caution cutTo(Predicate<Condition> fits) {
    List<Line> kept = lines.stream().filter(line -> fits.test(line.fits())).toList();
    return kept.isEmpty() ? this : new Caution(danger, kept, seek);
  }

  @Override
  public Kind kind() {
    return Kind.CAUTION;
  }
}
