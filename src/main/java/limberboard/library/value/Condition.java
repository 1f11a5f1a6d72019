package limberboard.library.value;

import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * Which boats something holds for ({@code fits}, {@code when}): all entries must hold, an empty
 * condition holds for every boat. Lists of models, waters, uses and exposures are alternatives; all
 * of {@code fitted} and none of {@code notFitted} must be fitted.
 *
 * @param model model ids
 * @param built years of building
 * @param hull hull numbers
 * @param fitted equipment choice ids, all of which the boat must have
 * @param notFitted equipment choice ids, none of which the boat may have
 * @param water waters
 * @param use uses
 * @param exposure exposures
 * @param age the least age
 * @param any alternatives, at least one of which must hold
 */
public record Condition(
    @Names(Named.MODEL) List<String> model,
    Optional<Range> built,
    Optional<Range> hull,
    @Names(Named.CHOICE) List<String> fitted,
    @Names(Named.CHOICE) List<String> notFitted,
    List<Water> water,
    List<Use> use,
    List<Exposure> exposure,
    Optional<Period> age,
    List<Condition> any) {

  /** The condition that every boat meets. */
  public static final Condition ALWAYS =
      new Condition(null, null, null, null, null, null, null, null, null, null);

  /** Absent entries become empty ones. */
  public Condition {
    model = EmptyValues.list(model);
    built = EmptyValues.optional(built);
    hull = EmptyValues.optional(hull);
    fitted = EmptyValues.list(fitted);
    notFitted = EmptyValues.list(notFitted);
    water = EmptyValues.list(water);
    use = EmptyValues.list(use);
    exposure = EmptyValues.list(exposure);
    age = EmptyValues.optional(age);
    any = EmptyValues.list(any);
  }

  /** Whether this condition says nothing, and so holds for every boat. */
  public boolean isEmpty() {
    return equals(ALWAYS);
  }
}
