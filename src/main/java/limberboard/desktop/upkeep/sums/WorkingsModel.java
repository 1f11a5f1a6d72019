package limberboard.desktop.upkeep.sums;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.base.Observed;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Sums;

/**
 * The sums of the trade and what was typed into each of them for each boat, without Swing. For the
 * event thread only.
 */
final class WorkingsModel extends Observed {
  private final UpkeepModel upkeep;
  private final Sums sums;
  private final Map<String, SumForm> forms = new HashMap<>();
  private Sum chosen;

  /**
   * A model on the first sum.
   *
   * @param upkeep tells the boat
   * @param sums at least one
   */
  WorkingsModel(UpkeepModel upkeep, Sums sums) {
    this.upkeep = upkeep;
    this.sums = sums;
    this.chosen = sums.all().get(0);
    upkeep.onChange(this::tell);
  }

  /** All sums, in order. */
  List<Sum> sums() {
    return sums.all();
  }

  /** The boat whose numbers stand in the forms. */
  Optional<Boat> boat() {
    return upkeep.boat();
  }

  /** The sum that is looked at. */
  Sum chosen() {
    return chosen;
  }

  /** Looks at a sum; without effect when there is none of this id. */
  void choose(String id) {
    sums.sum(id)
        .filter(sum -> sum != chosen)
        .ifPresent(
            sum -> {
              chosen = sum;
              tell();
            });
  }

  /** What is put into the sum that is looked at, for the chosen boat. */
  SumForm form() {
    String key = boat().map(Boat::id).orElse("") + " " + chosen.id();
    SumForm form = forms.computeIfAbsent(key, missing -> new SumForm(chosen, boat()));
    form.follow(boat());
    return form;
  }

  /** Tells of something that was changed in the form. */
  void changed() {
    tell();
  }

  /** Puts the boat's own numbers and the usual ones back into the form. */
  void reset() {
    form().reset();
    tell();
  }
}
