package limberboard.library;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * One danger and what to do about it, quoted by procedures, checks and symptoms.
 *
 * @param danger what can hurt whom
 * @param act what to do, most important first (key {@code do})
 * @param seek who or what comes before this page, or empty
 */
public record Caution(
    @Required String danger, @Required @JsonProperty("do") List<String> act, String seek)
    implements Details {

  /** Absent entries become empty ones. */
  public Caution {
    act = act == null ? null : Absent.list(act);
    seek = Absent.text(seek);
  }

  @Override
  public Kind kind() {
    return Kind.CAUTION;
  }
}
