package limberboard.library.check;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.measure.Quantity;
import limberboard.library.page.Kind;
import limberboard.library.page.Model;
import limberboard.library.page.RopePlan;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;

/** Checks the ropes of one model page. */
final class RopeCheck {
  private static final int MOST_PIECES = 100;
  private static final String USUAL_SIZE = "8 mm";
  private static final List<String> USUAL = List.of("I", "J", "P", "E", "forestay", "backstay");

  private final KnownNames names;
  private final Report report;
  private final Map<String, Amount.Fixed> known = new TreeMap<>();

  RopeCheck(Model model, KnownNames names, Report report) {
    this.names = names;
    this.report = report;
    known.putAll(model.measures());
    known.putAll(model.rig());
  }

  void check(List<RopePlan> ropes) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < ropes.size(); i++) {
      String pointer = "/ropes/" + i;
      if (!seen.add(ropes.get(i).id())) {
        report.error(
            pointer, "\"" + ropes.get(i).id() + "\" stands twice", "give each rope its own id");
      }
      names.condition(ropes.get(i).fits(), pointer + "/fits", report);
      ropes
          .get(i)
          .material()
          .ifPresent(id -> names.page(Kind.MATERIAL, id, pointer + "/material", report));
      length(ropes.get(i), pointer);
      thickness(ropes.get(i), pointer);
    }
  }

  private void length(RopePlan rope, String pointer) {
    if (rope.length().isEmpty() && rope.add().isEmpty()) {
      report.error(pointer, "has no length", "write length: {P: 2} or add: {tail: 2 m}");
    }
    rope.length().forEach((name, factor) -> dimension(name, factor, pointer + "/length/" + name));
    rope.add().forEach((what, extra) -> length(extra.quantity(), pointer + "/add/" + what));
    rope.cutTo().ifPresent(step -> size(step.quantity(), pointer + "/cut-to", "0.5 m"));
    if (rope.count() < 1 || rope.count() > MOST_PIECES) {
      report.error(pointer + "/count", "is not within 1 to 100", "write how many pieces there are");
    }
  }

  private void dimension(String name, double factor, String pointer) {
    if (!(factor > 0 && Double.isFinite(factor))) {
      report.error(pointer, "is no factor greater than 0", "write how many times it is counted");
    }
    Amount.Fixed value = known.get(name);
    if (value != null) {
      if (!KnownUnit.METRES.measures(value.quantity())) {
        report.error(pointer, "is " + written(value) + " here, no length", "name a length");
      }
    } else if (USUAL.contains(name) || names.isDimension(name)) {
      report.warning(
          pointer, "this page gives no " + name, "add it to rig or measures when it is known");
    } else {
      report.error(
          pointer,
          "there is no dimension \"" + name + "\"",
          Nearest.advice(name, known.keySet(), "name one that stands under rig or measures"));
    }
  }

  private static String written(Amount.Fixed value) {
    return KnownUnit.ownOf(value.quantity())
        .map(unit -> value.quantity().getValue() + " " + unit.symbol())
        .orElse(value.quantity().toString())
        .strip();
  }

  private void thickness(RopePlan rope, String pointer) {
    if (rope.diameter().isPresent() == rope.load().isPresent()) {
      report.error(
          pointer,
          rope.load().isPresent() ? "has both a load and a diameter" : "has no load or diameter",
          "keep one of load, diameter");
    }
    rope.diameter().ifPresent(size -> size(size.quantity(), pointer + "/diameter", USUAL_SIZE));
    rope.least()
        .forEach((why, size) -> size(size.quantity(), pointer + "/least/" + why, USUAL_SIZE));
    rope.most().forEach((why, size) -> size(size.quantity(), pointer + "/most/" + why, USUAL_SIZE));
    rope.least().values().stream()
        .filter(least -> rope.most().values().stream().anyMatch(most -> thicker(least, most)))
        .findFirst()
        .ifPresent(
            least -> report.error(pointer + "/least", "is more than most", "make it smaller"));
    rope.load().ifPresent(load -> new RopeLoadCheck(report).check(load, pointer + "/load"));
  }

  private static boolean thicker(Amount.Fixed one, Amount.Fixed other) {
    return KnownUnit.METRES.of(one.quantity()).orElse(0)
        > KnownUnit.METRES.of(other.quantity()).orElse(Double.MAX_VALUE);
  }

  private void length(Quantity<?> quantity, String pointer) {
    if (!KnownUnit.METRES.measures(quantity)) {
      report.error(pointer, "is no length", "write a length such as 2 m");
    }
  }

  private void size(Quantity<?> quantity, String pointer, String such) {
    if (!(KnownUnit.METRES.of(quantity).orElse(0) > 0)) {
      report.error(pointer, "is no length above 0", "write a length such as " + such);
    }
  }
}
