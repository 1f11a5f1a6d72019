package limberboard.drill.play;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;
import limberboard.trace.Fault;

/**
 * Many drills on one fault played in one way, and marked.
 *
 * @param marks one for each drill, in the order of their seeds
 */
public record PlayedDrills(List<DrillMark> marks) {
  /** Copies the list. */
  public PlayedDrills {
    marks = List.copyOf(marks);
  }

  /**
   * Plays drills with the seeds from 0 on.
   *
   * @param fault the fault
   * @param counsel of that fault
   * @param player how they are played
   * @param count how many, 1 or more
   */
  public static PlayedDrills of(Fault fault, Counsel counsel, Player player, int count) {
    DrillMarker marker = new DrillMarker(counsel);
    List<DrillMark> marks = new ArrayList<>();
    for (long seed = 0; seed < count; seed++) {
      DrillOrder order =
          new DrillOrder(
              fault.page().id(), fault.fitting().boat().id(), fault.fitting().on(), seed, 0);
      marks.add(marker.mark(player.play(Drill.of(order, fault))));
    }
    return new PlayedDrills(marks);
  }

  /** A figure on average. */
  public double mean(ToDoubleFunction<DrillMark> figure) {
    return marks.stream().mapToDouble(figure).average().orElseThrow();
  }

  /** The largest there is. */
  public double most(ToDoubleFunction<DrillMark> figure) {
    return marks.stream().mapToDouble(figure).max().orElseThrow();
  }

  /** How far a figure is spread: its standard deviation. */
  public double spread(ToDoubleFunction<DrillMark> figure) {
    double mean = mean(figure);
    return Math.sqrt(
        marks.stream()
            .mapToDouble(mark -> Math.pow(figure.applyAsDouble(mark) - mean, 2))
            .average()
            .orElseThrow());
  }

  /** In how many the yard was called before anything was looked at. */
  public long yardAtOnce() {
    return marks.stream().filter(DrillMark::yardAtOnce).count();
  }
}
