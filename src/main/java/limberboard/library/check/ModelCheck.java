package limberboard.library.check;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Function;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.Range;

/** Checks model pages: zones, equipment by year, access. */
final class ModelCheck implements PageCheck<Model> {
  @Override
  public void check(Page<Model> page, KnownNames names, Report report) {
    Model model = page.details();
    distinct(model.drawnZones(), Model.Zone::id, "/zones", report);
    distinct(model.equipment(), Model.Equipment::id, "/equipment", report);
    distinct(model.access(), Model.Access::id, "/access", report);
    for (int i = 0; i < model.drawnZones().size(); i++) {
      Model.Zone zone = model.drawnZones().get(i);
      if (zone.profile().isEmpty() && zone.deck().isEmpty()) {
        report.error("/zones/" + i, "is in neither drawing", "give it an outline in one of them");
      }
    }
    Set<String> choices = new HashSet<>();
    for (int i = 0; i < model.equipment().size(); i++) {
      equipment(model, model.equipment().get(i), choices, "/equipment/" + i, report);
    }
    access(model, names, report);
    new RopeCheck(model, names, report).check(model.ropes());
  }

  private static <T> void distinct(
      List<T> entries, Function<T, String> id, String pointer, Report report) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < entries.size(); i++) {
      String each = id.apply(entries.get(i));
      if (!seen.add(each)) {
        report.error(pointer + "/" + i, "\"" + each + "\" stands twice", "give each its own id");
      }
    }
  }

  private static void equipment(
      Model model, Model.Equipment equipment, Set<String> seen, String pointer, Report report) {
    for (int i = 0; i < equipment.choices().size(); i++) {
      Model.Choice choice = equipment.choices().get(i);
      String at = pointer + "/choices/" + i;
      if (!seen.add(choice.id())) {
        report.error(at, "\"" + choice.id() + "\" stands twice", "give each its own id");
      }
    }
    Optional<Integer> uncovered = yearWithoutDefault(model.built(), equipment);
    uncovered.ifPresent(
        year ->
            report.error(
                pointer,
                "says not what the yard fitted in " + year,
                "give each year from " + model.built() + " one default"));
  }

  /** The first year of building in which no choice, or one not to be had, is the default. */
  private static Optional<Integer> yearWithoutDefault(Range built, Model.Equipment equipment) {
    Set<Integer> years = new java.util.TreeSet<>();
    built.from().ifPresent(years::add);
    built.to().ifPresent(years::add);
    for (Model.Choice choice : equipment.choices()) {
      for (Range range :
          List.of(choice.usual(), choice.built()).stream().flatMap(Optional::stream).toList()) {
        range.from().ifPresent(from -> years.addAll(List.of(from - 1, from)));
        range.to().ifPresent(to -> years.addAll(List.of(to, to + 1)));
      }
    }
    return years.stream()
        .filter(built::contains)
        .filter(
            year ->
                equipment
                    .defaultFor(year)
                    .map(choice -> !equipment.choicesFor(year).contains(choice))
                    .orElse(true))
        .findFirst();
  }

  private static void access(Model model, KnownNames names, Report report) {
    Map<String, List<String>> needs = new TreeMap<>();
    model.access().forEach(entry -> needs.put(entry.id(), entry.needs()));
    List<SortedSet<String>> circles = Circles.of(needs);
    for (int i = 0; i < model.access().size(); i++) {
      Model.Access entry = model.access().get(i);
      String pointer = "/access/" + i;
      names.condition(entry.fits(), pointer + "/fits", report);
      if (!(entry.minutes() >= 0 && entry.minutes() <= 10_000)) {
        report.error(
            pointer + "/minutes", "is not within 0 to 10000", "write the minutes it takes");
      }
      for (String need : entry.needs()) {
        if (!needs.containsKey(need)) {
          report.error(
              pointer + "/needs",
              "this model has no access \"" + need + "\"",
              Nearest.advice(need, needs.keySet(), "list it under access"));
        }
      }
      List<String> circle = circle(entry, circles, needs);
      if (!circle.isEmpty()) {
        report.error(
            pointer + "/needs",
            "runs in a circle: " + String.join(" needs ", circle),
            "take one of these needs out");
      }
    }
  }

  /** The way from an access over others, or at once, back to itself; empty when there is none. */
  private static List<String> circle(
      Model.Access entry, List<SortedSet<String>> circles, Map<String, List<String>> needs) {
    if (entry.needs().contains(entry.id())) {
      return List.of(entry.id(), entry.id());
    }
    return circles.stream()
        .filter(circle -> circle.contains(entry.id()))
        .findFirst()
        .map(circle -> Circles.way(entry.id(), circle, needs))
        .orElse(List.of());
  }
}
