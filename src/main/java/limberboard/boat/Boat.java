package limberboard.boat;

import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * One owner's boat.
 *
 * @param id the name of its folder; for a boat that nobody has entered see {@link NotEntered}
 * @param name what it is called
 * @param model its model's page
 * @param hull hull number, greater than 0; {@link NotEntered#NO_HULL} when nobody knows it
 * @param built year of building
 * @param launched the day it first went afloat, from which its age counts
 * @param bought the day its owner bought it from another; empty when it came new from the yard
 * @param use what it is used for
 * @param water where it lies
 * @param exposure how much weather it takes there
 * @param equipment equipment id to choice id, for all equipment of the model
 * @param season when it is afloat in the year
 * @param note anything else
 * @param log what has been done, by date
 */
public record Boat(
    String id,
    String name,
    Page<Model> model,
    int hull,
    int built,
    Optional<LocalDate> launched,
    Optional<LocalDate> bought,
    Use use,
    Water water,
    Exposure exposure,
    Map<String, String> equipment,
    Optional<Season> season,
    String note,
    List<LogEntry> log) {

  /** Copies the collections. */
  public Boat {
    equipment = Collections.unmodifiableMap(new LinkedHashMap<>(equipment));
    log = List.copyOf(log);
  }

  /** A boat that came new from the yard, as far as anybody knows. */
  public Boat(
      String id,
      String name,
      Page<Model> model,
      int hull,
      int built,
      Optional<LocalDate> launched,
      Use use,
      Water water,
      Exposure exposure,
      Map<String, String> equipment,
      Optional<Season> season,
      String note,
      List<LogEntry> log) {
    this(
        id,
        name,
        model,
        hull,
        built,
        launched,
        Optional.empty(),
        use,
        water,
        exposure,
        equipment,
        season,
        note,
        log);
  }

  /** Whether the boat has a file, and so can have a log. */
  public boolean isEntered() {
    return !NotEntered.isId(id);
  }

  /** Model, hull number and year: "Tarnwick 26, hull 141, built 2021". */
  public String particulars() {
    String hullWords = hull == NotEntered.NO_HULL ? "" : ", hull " + hull;
    return model.title() + hullWords + ", built " + built + (isEntered() ? "" : ", not entered");
  }

  /** The same boat with another log. */
  public Boat with(List<LogEntry> entries) {
    return copy(id, bought, entries);
  }

  /** The same boat, bought from another owner on a day. */
  public Boat bought(LocalDate day) {
    return copy(id, Optional.of(day), log);
  }

  /** The same boat in another folder. */
  public Boat named(String folder) {
    return copy(folder, bought, log);
  }

  private Boat copy(String folder, Optional<LocalDate> day, List<LogEntry> entries) {
    return new Boat(
        folder, name, model, hull, built, launched, day, use, water, exposure, equipment, season,
        note, entries);
  }

  /** Whether a choice of equipment is fitted. */
  public boolean has(String choice) {
    return equipment.containsValue(choice);
  }

  /** The day from which the boat's age counts: its launch, or 1 January of its year. */
  public LocalDate ageFrom() {
    return launched.orElse(LocalDate.of(built, Month.JANUARY, 1));
  }
}
