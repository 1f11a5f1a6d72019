package limberboard.boat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Map;
import java.util.Optional;
import limberboard.library.problem.Limits;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Exposure;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.library.value.Within;

/**
 * A boat as its file {@code boat.yaml} has it, before its model is looked up.
 *
 * @param name what it is called
 * @param model model id
 * @param hull hull number
 * @param built year
 * @param launched first day afloat
 * @param bought the day its owner bought it from another
 * @param use what it is used for
 * @param water where it lies
 * @param exposure how much weather it takes there
 * @param equipment equipment id to choice id, where it differs from what the yard fitted
 * @param season when it is afloat
 * @param note anything else
 */
record BoatFile(
    @Required String name,
    @Required @Names(Named.MODEL) String model,
    @Required Integer hull,
    @Required @Within(least = Limits.FIRST_YEAR, most = Limits.LAST_YEAR) Integer built,
    Optional<LocalDate> launched,
    Optional<LocalDate> bought,
    Optional<Use> use,
    Optional<Water> water,
    Optional<Exposure> exposure,
    Map<String, String> equipment,
    Optional<SeasonFile> season,
    String note) {

  @SuppressWarnings("OptionalAssignedToNull")
  BoatFile {
    launched = launched == null ? Optional.empty() : launched;
    bought = bought == null ? Optional.empty() : bought;
    use = use == null ? Optional.empty() : use;
    water = water == null ? Optional.empty() : water;
    exposure = exposure == null ? Optional.empty() : exposure;
    equipment = EmptyValues.map(equipment);
    season = season == null ? Optional.empty() : season;
    note = note == null ? "" : note;
  }

  /** A season as the file has it. */
  record SeasonFile(@Required MonthDay from, @Required MonthDay to) {}
}
