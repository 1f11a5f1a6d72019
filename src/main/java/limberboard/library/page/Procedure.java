package limberboard.library.page;

import java.time.Period;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Interval;
import limberboard.library.value.Required;
import limberboard.library.value.Skill;
import limberboard.library.value.Work;

/**
 * How one job is done.
 *
 * @param work what it does
 * @param skill who may do it
 * @param minutes the work itself, without access, 1 to 10 000
 * @param access ids of what must be opened first
 * @param tools tools
 * @param materials materials and amounts
 * @param cautions caution ids
 * @param lookFor what good and bad look like
 * @param interval how often it is done
 * @param lookAgain the follow-up afterwards
 * @param resets procedures whose interval starts anew when this is done
 * @param before procedures that come after this one when both are to be done
 * @param ownerParts headings of the sections that are the owner's although the work is for the
 *     licensed; the rest of such a page is not printed
 * @param workings sums shown with it
 */
public record Procedure(
    @Required Work work,
    @Required Skill skill,
    @Required Integer minutes,
    List<String> access,
    List<ToolUse> tools,
    List<MaterialUse> materials,
    List<String> cautions,
    Optional<LookFor> lookFor,
    Optional<Interval> interval,
    Optional<LookAgain> lookAgain,
    List<String> resets,
    List<String> before,
    List<String> ownerParts,
    List<SumUse> workings)
    implements Details {

  /** Absent entries become empty ones. */
  public Procedure {
    access = EmptyValues.list(access);
    tools = EmptyValues.list(tools);
    materials = EmptyValues.list(materials);
    cautions = EmptyValues.list(cautions);
    lookFor = EmptyValues.optional(lookFor);
    interval = EmptyValues.optional(interval);
    lookAgain = EmptyValues.optional(lookAgain);
    resets = EmptyValues.list(resets);
    before = EmptyValues.list(before);
    ownerParts = EmptyValues.list(ownerParts);
    workings = EmptyValues.list(workings);
  }

  @Override
  public Kind kind() {
    return Kind.PROCEDURE;
  }

  /**
   * What good and bad look like.
   *
   * @param good what may stay as it is
   * @param bad what must be dealt with
   */
  public record LookFor(@Required String good, @Required String bad) {}

  /**
   * A follow-up after the work.
   *
   * @param after how long after
   * @param with the procedure to look again with; empty means this one's own last test
   */
  public record LookAgain(@Required Period after, Optional<String> with) {
    /** Absent entries become empty ones. */
    public LookAgain {
      with = EmptyValues.optional(with);
    }
  }
}
