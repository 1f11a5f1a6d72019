package limberboard.rigging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.RopePlan;

/**
 * The running rigging of one boat.
 *
 * @param fitting the boat, and the day on which conditions are judged
 * @param ropes its ropes, by group and within it in the order of the model's page
 * @param cautionsOf tells the cautions of renewing them
 */
public record RunningRigging(Fitting fitting, List<Rope> ropes, WorkCautions cautionsOf) {

  /** Copies the list. */
  public RunningRigging {
    ropes = List.copyOf(ropes);
  }

  /**
   * Reckons every rope that the boat has by its equipment.
   *
   * @param library where the pages of ropes are looked up
   * @param fitting the boat and the day
   */
  public static RunningRigging of(Library library, Fitting fitting) {
    Dimensions dimensions = new Dimensions(fitting.boat().model());
    LengthRule lengths = new LengthRule(dimensions);
    PullRule pulls = new PullRule(dimensions);
    RopePages stock = RopePages.of(library);
    List<Rope> ropes = new ArrayList<>();
    for (RopePlan plan : fitting.boat().model().details().ropes()) {
      if (fitting.fits(plan.fits())) {
        Pull pull = pulls.of(plan);
        ropes.add(rope(plan, lengths.of(plan), pull, ThicknessRule.of(plan, pull), stock));
      }
    }
    ropes.sort(Comparator.comparing(Rope::group));
    return new RunningRigging(fitting, ropes, WorkCautions.on(library, fitting));
  }

  private static Rope rope(
      RopePlan plan, RopeLength length, Pull pull, Thickness thickness, RopePages stock) {
    return new Rope(
        plan.id(),
        plan.title(),
        plan.purpose(),
        plan.group(),
        plan.count(),
        plan.construction(),
        length,
        pull,
        thickness,
        plan.ends(),
        stock.page(plan, thickness));
  }

  /** The cautions of renewing any of the ropes, each because of the first that brings it in. */
  public List<WorkCaution> cautions() {
    return WorkCautions.joined(ropes.stream().map(this::cautions).toList());
  }

  /** The cautions of renewing one of the ropes. */
  public List<WorkCaution> cautions(Rope rope) {
    return cautionsOf.ofMaterials(rope.material().stream().toList());
  }

  /**
   * What to buy, by construction and diameter. Ropes with an open length or diameter are not in it.
   */
  public List<RopeTotal> totals() {
    return RopeTotal.of(ropes);
  }
}
