package limberboard.desktop.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * What is put into the small form for a boat that nobody has entered, without Swing. For the event
 * thread only.
 */
final class UnknownBoat {
  private final List<Page<Model>> models;
  private final int lastYear;
  private final Map<String, String> fitted = new LinkedHashMap<>();
  private Optional<Page<Model>> model;
  private String year = "";
  private Water water = Water.SALT;
  private Use use = Use.PRIVATE;

  /**
   * An empty form with the first model.
   *
   * @param library the models
   * @param lastYear the last year in which a boat may have been built
   */
  UnknownBoat(Library library, int lastYear) {
    this.models = library.all(Model.class);
    this.lastYear = lastYear;
    this.model = models.stream().findFirst();
  }

  List<Page<Model>> models() {
    return models;
  }

  void model(Page<Model> chosen) {
    model = Optional.of(chosen);
    fitted.clear();
  }

  void year(String typed) {
    year = typed.strip();
  }

  void fit(String equipment, String choice) {
    fitted.put(equipment, choice);
  }

  void water(Water chosen) {
    water = chosen;
  }

  void use(Use chosen) {
    use = chosen;
  }

  /** What there is to choose from on this model, whatever the year. */
  List<Equipment> choices() {
    return model.map(Page::details).map(Model::equipment).orElse(List.of()).stream()
        .filter(equipment -> equipment.choices().size() > 1)
        .toList();
  }

  /** What is fitted: what was chosen, otherwise what the yard fitted in that year. */
  Map<String, String> fitted() {
    Map<String, String> all = new LinkedHashMap<>();
    built().ifPresent(y -> all.putAll(model.orElseThrow().details().usualEquipment(y)));
    all.putAll(fitted);
    return all;
  }

  /** What is missing or wrong, in words; empty when there is a boat. */
  Optional<String> problem() {
    if (model.isEmpty()) {
      return Optional.of("The library has no models yet.");
    }
    String title = model.get().title();
    List<String> years = new ArrayList<>();
    model.get().details().built().from().ifPresent(from -> years.add("from " + from));
    model.get().details().built().to().ifPresent(to -> years.add("to " + to));
    String when = years.isEmpty() ? "" : ", " + String.join(" ", years);
    if (!year.matches("\\d{4}")) {
      return Optional.of("The year she was built, four digits" + when + ".");
    }
    return built().isPresent()
        ? Optional.empty()
        : Optional.of(
            "No " + title + " was built in " + year + when.replace(", ", "; only ") + ".");
  }

  private Optional<Integer> built() {
    return Optional.of(year)
        .filter(text -> text.matches("\\d{4}"))
        .map(Integer::valueOf)
        .filter(y -> y <= lastYear)
        .filter(y -> model.filter(page -> page.details().built().contains(y)).isPresent());
  }

  /** The boat, once nothing is missing. */
  Optional<Boat> boat() {
    return built().map(y -> NotEntered.boat(model.orElseThrow(), y, fitted, water, use));
  }
}
