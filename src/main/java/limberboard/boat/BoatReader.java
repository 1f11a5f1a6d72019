package limberboard.boat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Exposure;
import limberboard.library.HeaderBinder;
import limberboard.library.Library;
import limberboard.library.Model;
import limberboard.library.Nearest;
import limberboard.library.Page;
import limberboard.library.Problem;
import limberboard.library.TextFile;
import limberboard.library.Use;
import limberboard.library.Water;
import limberboard.library.WorkspaceFolders;

/** Reads one boat's folder: {@code boat.yaml} and {@code log.csv}. */
final class BoatReader {
  static final String BOAT = "boat.yaml";
  static final String LOG = "log.csv";

  private final WorkspaceFolders folders;
  private final Library library;
  private final HeaderBinder binder;

  BoatReader(WorkspaceFolders folders, Library library, HeaderBinder binder) {
    this.folders = folders;
    this.library = library;
    this.binder = binder;
  }

  /** A boat, if it can be used, with what is wrong in its files. */
  record Read(Optional<Boat> boat, List<Problem> problems) {}

  /** Reads the boat in a folder. */
  Read read(Path folder) {
    String file = folders.relative(folder.resolve(BOAT));
    TextFile.Result text = TextFile.read(folder.resolve(BOAT), file);
    if (!text.problems().isEmpty()) {
      return new Read(Optional.empty(), text.problems());
    }
    HeaderBinder.Bound<BoatFile> bound = binder.read(file, text.text(), BoatFile.class);
    List<Problem> problems = new ArrayList<>(bound.problems());
    Optional<Boat> boat = bound.value().flatMap(read -> boat(folder, file, read, problems));
    return new Read(boat, problems);
  }

  private Optional<Boat> boat(Path folder, String file, BoatFile read, List<Problem> problems) {
    Optional<Page<Model>> model = library.model(read.model());
    if (model.isEmpty()) {
      List<String> known = library.all(Model.class).stream().map(Page::id).toList();
      problems.add(
          Problem.error(
              file,
              0,
              "model",
              "there is no model \"" + read.model() + "\"",
              Nearest.advice(read.model(), known, "name a page of articles/models")));
      return Optional.empty();
    }
    if (!model.get().details().built().contains(read.built())) {
      problems.add(
          Problem.error(
              file,
              0,
              "built",
              "the " + model.get().title() + " was not built in " + read.built(),
              "it was built " + model.get().details().built()));
    }
    if (read.hull() < 1) {
      problems.add(Problem.error(file, 0, "hull", "is less than 1", "write the hull number"));
    }
    LogReader.Read log = log(folder);
    problems.addAll(log.problems());
    return Optional.of(
        new Boat(
            folder.getFileName().toString(),
            read.name(),
            model.get(),
            read.hull(),
            read.built(),
            read.launched(),
            read.use().orElse(Use.PRIVATE),
            read.water().orElse(Water.SALT),
            read.exposure().orElse(Exposure.USUAL),
            equipment(model.get().details(), file, read, problems),
            read.season().map(season -> new Season(season.from(), season.to())),
            read.hourIsWorth(),
            read.note(),
            log.entries()));
  }

  private LogReader.Read log(Path folder) {
    Path log = folder.resolve(LOG);
    return Files.exists(log)
        ? new LogReader(folders, library).read(log)
        : new LogReader.Read(List.of(), List.of());
  }

  /** The complete equipment: as the file says, otherwise as the yard fitted it that year. */
  private static Map<String, String> equipment(
      Model model, String file, BoatFile read, List<Problem> problems) {
    Map<String, String> complete = model.usualEquipment(read.built());
    read.equipment()
        .forEach(
            (id, choice) -> {
              Optional<String> wrong = wrong(model, id, choice, read.built());
              if (wrong.isPresent()) {
                problems.add(
                    Problem.error(
                        file, 0, "equipment." + id, wrong.get(), right(model, id, read.built())));
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
    boolean had = equipment.get().choicesFor(year).stream().anyMatch(c -> c.id().equals(choice));
    return had ? Optional.empty() : Optional.of("\"" + choice + "\" was not to be had in " + year);
  }

  private static String right(Model model, String id, int year) {
    return model
        .equipment(id)
        .map(
            equipment ->
                "choose one of "
                    + String.join(
                        ", ", equipment.choicesFor(year).stream().map(Model.Choice::id).toList()))
        .orElse(
            "choose from "
                + String.join(", ", model.equipment().stream().map(Model.Equipment::id).toList()));
  }
}
