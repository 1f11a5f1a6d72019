package limberboard.library.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;
import limberboard.library.value.RopeGroup;

/**
 * One rope of a model's running rigging: how its length and its diameter follow from the rig. Its
 * diameter is either stated or follows from a load; one of the two is given.
 *
 * @param id unique among the model's ropes
 * @param title what it is called
 * @param purpose where it runs and what it does
 * @param group the part of the list it stands in
 * @param fits on which boats it is found
 * @param length rig dimension or measure to factor, greater than 0
 * @param add lengths besides, by what they are for
 * @param cutTo step in length to which it is rounded up; half a metre when absent
 * @param count pieces of this length; one when absent
 * @param construction how it is made
 * @param diameter a stated diameter
 * @param load what pulls on it
 * @param least smallest diameter by its reason, such as the hand's comfort
 * @param most largest diameter by its reason, such as a sheave's groove
 * @param material the page of this rope; when absent, one whose {@code rope} agrees
 * @param ends how its ends are finished, one or two entries
 */
public record RopePlan(
    @Required String id,
    @Required String title,
    String purpose,
    @Required RopeGroup group,
    Condition fits,
    Map<String, Double> length,
    Map<String, Amount.Fixed> add,
    Optional<Amount.Fixed> cutTo,
    Integer count,
    @Required RopeConstruction construction,
    Optional<Amount.Fixed> diameter,
    Optional<RopeLoad> load,
    Map<String, Amount.Fixed> least,
    Map<String, Amount.Fixed> most,
    @Names(Named.MATERIAL) Optional<String> material,
    List<RopeEnd> ends) {

  /** Absent entries get their defaults. */
  public RopePlan {
    purpose = EmptyValues.text(purpose);
    fits = EmptyValues.condition(fits);
    length = EmptyValues.map(length);
    add = EmptyValues.map(add);
    cutTo = EmptyValues.optional(cutTo);
    count = count == null ? 1 : count;
    diameter = EmptyValues.optional(diameter);
    load = EmptyValues.optional(load);
    least = EmptyValues.map(least);
    most = EmptyValues.map(most);
    material = EmptyValues.optional(material);
    ends = EmptyValues.list(ends);
  }
}
