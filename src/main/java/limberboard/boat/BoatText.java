package limberboard.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * Reads the text of a {@code boat.yaml}. What cannot be used is reported with its line and counts
 * as left out; without a name, a model, a hull number or a year in range there is no boat.
 */
final class BoatText {
  private final Library library;
  private final HeaderBinder binder;

  BoatText(Library library, HeaderBinder binder) {
    this.library = library;
    this.binder = binder;
  }

  /** A boat with an empty log, if it can be used, with what is wrong in its file. */
  record Read(Optional<Boat> boat, List<Problem> problems, int hullLine) {}

  /**
   * Reads a text.
   *
   * @param id the boat's id
   * @param file what problems call the file
   */
  Read read(String id, String file, String text) {
    HeaderBinder.Bound<BoatFile> bound = binder.read(file, text, BoatFile.class);
    Reading reading = new Reading(file, bound, new ArrayList<>(bound.problems()));
    Optional<Boat> boat = bound.value().flatMap(read -> boat(id, read, reading));
    return new Read(boat, reading.problems(), bound.line("hull"));
  }

  /** The file while it is read. */
  private record Reading(String file, HeaderBinder.Bound<BoatFile> bound, List<Problem> problems) {
    void wrong(String key, String wrong, String right) {
      problems.add(Problem.error(file, bound.line(key), key, wrong, right));
    }
  }

  private Optional<Boat> boat(String id, BoatFile read, Reading reading) {
    Optional<Page<Model>> model = library.model(read.model());
    if (model.isEmpty()) {
      List<String> known = library.all(Model.class).stream().map(Page::id).toList();
      reading.wrong(
          "model",
          "there is no model \"" + read.model() + "\"",
          Nearest.advice(read.model(), known, "name a page of articles/models"));
      return Optional.empty();
    }
    if (!model.get().details().built().contains(read.built())) {
      reading.wrong(
          "built",
          "the " + model.get().title() + " was not built in " + read.built(),
          "it was built " + model.get().details().built());
    }
    if (read.hull() < 1) {
      reading.wrong("hull", "is less than 1", "write the hull number");
    }
    if (read.name().isBlank()) {
      reading.wrong("name", "is empty", "write what the boat is called");
    }
    return Optional.of(
        new Boat(
            id,
            read.name().isBlank() ? id : read.name(),
            model.get(),
            read.hull(),
            read.built(),
            read.launched(),
            bought(read, reading),
            read.use().orElse(Use.PRIVATE),
            read.water().orElse(Water.SALT),
            read.exposure().orElse(Exposure.USUAL),
            equipment(model.get().details(), read, reading),
            read.season().map(season -> new Season(season.from(), season.to())),
            read.note(),
            List.of()));
  }

  /** The day she was bought, unless that cannot be. */
  private static Optional<LocalDate> bought(BoatFile read, Reading reading) {
    Optional<LocalDate> before =
        read.bought().filter(day -> day.getYear() < read.built() || !LogDay.isYear(day.getYear()));
    before.ifPresent(
        day ->
            reading.wrong(
                "bought",
                day + " lies before " + read.built() + ", the year she was built in",
                "write the day on which you bought her, such as "
                    + read.built()
                    + "-10-03, or leave it out if she came new from the yard"));
    return before.isPresent() ? Optional.empty() : read.bought();
  }

  /**
   * The complete equipment: as the file says, otherwise as the yard fitted it that year. What came
   * only after the boat was built has been fitted later; what had gone by then is a mistake.
   */
  private static Map<String, String> equipment(Model model, BoatFile read, Reading reading) {
    Map<String, String> complete = model.usualEquipment(read.built());
    read.equipment()
        .forEach(
            (id, choice) -> {
              Optional<String> wrong = wrong(model, id, choice, read.built());
              if (wrong.isPresent()) {
                reading.wrong("equipment." + id, wrong.get(), right(model, id, read.built()));
              } else {
                complete.put(id, choice);
              }
            });
    return complete;
  }

  private static Optional<String> wrong(Model model, String id, String choice, int year) {
    Optional<Model.Equipment> equipment = model.equipment(id);
    if (equipment.isEmpty()) {
      return Optional.of("this model has no such equipment");
    }
    boolean known = equipment.get().choices().stream().anyMatch(c -> c.id().equals(choice));
    if (!known) {
      return Optional.of("\"" + choice + "\" is not among its choices");
    }
    boolean can = equipment.get().fittable(year).stream().anyMatch(c -> c.id().equals(choice));
    return can
        ? Optional.empty()
        : Optional.of("\"" + choice + "\" was no longer to be had in " + year);
  }

  private static String right(Model model, String id, int year) {
    return model
        .equipment(id)
        .map(
            equipment ->
                "choose one of "
                    + String.join(
                        ", ", equipment.fittable(year).stream().map(Model.Choice::id).toList()))
        .orElse(
            "choose from "
                + String.join(", ", model.equipment().stream().map(Model.Equipment::id).toList()));
  }
}
