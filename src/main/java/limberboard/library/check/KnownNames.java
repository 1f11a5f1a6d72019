package limberboard.library.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.measure.Quantity;
import limberboard.library.page.Kind;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.LogEvents;

/** All names that headers may refer to, gathered from the whole library. */
public final class KnownNames {
  private final Map<Kind, Set<String>> pages = new HashMap<>();
  private final Set<String> tools = new HashSet<>();
  private final Set<String> unusable = new HashSet<>();
  private final Set<String> zones = new TreeSet<>();
  private final Set<String> access = new TreeSet<>();
  private final Set<String> choices = new TreeSet<>();
  private final SortedMap<String, List<Quantity<?>>> measures = new TreeMap<>();
  private final Set<String> rig = new HashSet<>();
  private final Set<String> ropes = new TreeSet<>();

  public KnownNames(Collection<ParsedPage> parsed) {
    for (Kind kind : Kind.values()) {
      pages.put(kind, new TreeSet<>());
    }
    for (ParsedPage each : parsed) {
      each.page().ifPresentOrElse(this::add, () -> unusable.add(each.id()));
    }
  }

  /** The same names and those of another page. */
  public KnownNames with(ParsedPage more) {
    KnownNames all = new KnownNames(List.of());
    pages.forEach((kind, ids) -> all.pages.get(kind).addAll(ids));
    all.tools.addAll(tools);
    all.unusable.addAll(unusable);
    all.zones.addAll(zones);
    all.access.addAll(access);
    all.choices.addAll(choices);
    measures.forEach((name, values) -> all.measures.put(name, new ArrayList<>(values)));
    all.rig.addAll(rig);
    all.ropes.addAll(ropes);
    more.page().ifPresentOrElse(all::add, () -> all.unusable.add(more.id()));
    return all;
  }

  private void add(Page<?> page) {
    pages.get(page.kind()).add(page.id());
    if (page.details() instanceof Material material && material.isTool()) {
      tools.add(page.id());
    }
    if (page.details() instanceof Model model) {
      model.drawnZones().forEach(zone -> zones.add(zone.id()));
      model.access().forEach(entry -> access.add(entry.id()));
      model.equipment().stream()
          .flatMap(equipment -> equipment.choices().stream())
          .forEach(choice -> choices.add(choice.id()));
      model.measures().forEach(this::measure);
      rig.addAll(model.rig().keySet());
      model.ropes().forEach(rope -> ropes.add(rope.id()));
    }
  }

  private void measure(String name, Amount.Fixed value) {
    measures.computeIfAbsent(name, none -> new ArrayList<>()).add(value.quantity());
  }

  /** What the models have as this measure; empty when no model has it. */
  List<Quantity<?>> measured(String name) {
    return List.copyOf(measures.getOrDefault(name, List.of()));
  }

  /** Reports a reference to a page of this kind that is not there. */
  void page(Kind kind, String id, String pointer, Report report) {
    Set<String> known = pages.get(kind);
    if (known.contains(id) || unusable.contains(id)) {
      return;
    }
    String folder = "articles/" + kind.folder() + "/";
    report.error(
        pointer,
        "there is no " + kind.word() + " \"" + id + "\"",
        Nearest.advice(id, known, "write the page " + folder + id + ".md or name another"));
  }

  /** Reports references to pages of this kind that are not there. */
  void pages(Kind kind, List<String> ids, String pointer, Report report) {
    for (int i = 0; i < ids.size(); i++) {
      page(kind, ids.get(i), pointer + "/" + i, report);
    }
  }

  /** Reports a word that can never stand in a log: neither a procedure nor an event. */
  void logWord(String word, String pointer, Report report) {
    Set<String> known = new TreeSet<>(pages.get(Kind.PROCEDURE));
    known.addAll(LogEvents.TURNS);
    if (!known.contains(word) && !unusable.contains(word)) {
      report.error(
          pointer,
          "\"" + word + "\" is neither a procedure nor an event of the log",
          Nearest.advice(word, known, "write a procedure id, or an event such as launched"));
    }
  }

  /** Whether a material is a tool; also true of what could not be read. */
  boolean mayBeTool(String id) {
    return tools.contains(id) || !pages.get(Kind.MATERIAL).contains(id);
  }

  /** Whether a material is used up; also true of what could not be read. */
  boolean mayBeUsedUp(String id) {
    return !tools.contains(id);
  }

  void zones(List<String> ids, String pointer, Report report) {
    some("zone", zones, ids, pointer, report);
  }

  void access(List<String> ids, String pointer, Report report) {
    some("access", access, ids, pointer, report);
  }

  void ropes(List<String> ids, String pointer, Report report) {
    some("rope", ropes, ids, pointer, report);
  }

  void measure(String name, String pointer, Report report) {
    one("measure", measures.keySet(), name, pointer, report);
  }

  /** Whether some model gives a rig dimension or measure of this name. */
  boolean isDimension(String name) {
    return rig.contains(name) || measures.containsKey(name);
  }

  /** Reports what a condition refers to that is not there. */
  void condition(Condition condition, String pointer, Report report) {
    pages(Kind.MODEL, condition.model(), pointer + "/model", report);
    some("equipment choice", choices, condition.fitted(), pointer + "/fitted", report);
    some("equipment choice", choices, condition.notFitted(), pointer + "/not-fitted", report);
    for (int i = 0; i < condition.any().size(); i++) {
      condition(condition.any().get(i), pointer + "/any/" + i, report);
    }
  }

  private static void some(
      String what, Set<String> known, List<String> ids, String pointer, Report report) {
    for (int i = 0; i < ids.size(); i++) {
      one(what, known, ids.get(i), pointer + "/" + i, report);
    }
  }

  private static void one(
      String what, Set<String> known, String id, String pointer, Report report) {
    if (!known.contains(id)) {
      report.error(
          pointer,
          "no model has the " + what + " \"" + id + "\"",
          Nearest.advice(id, known, "name one that a model page lists"));
    }
  }
}
