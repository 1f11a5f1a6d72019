package limberboard.workings.sums;

import java.util.List;
import java.util.Optional;

/**
 * The sums there are, in the order in which they are listed. Immutable.
 *
 * @param all all sums, with distinct ids
 */
public record Sums(List<Sum> all) {
  /** Copies the list. */
  public Sums {
    all = List.copyOf(all);
  }

  /** The sums that come with the program. */
  public static Sums ofTheTrade() {
    return new Sums(
        List.of(
            new SealantBead(),
            new AnodeMass(),
            new OilViscosity(),
            new BoltTorque(),
            new WireTension(),
            new HoleInflow(),
            new LeakFromRise(),
            new BilgePump(),
            new CableSize(),
            new BatteryTime(),
            new RopeDiameter(),
            new LashingTurns()));
  }

  /** The sum with this id. */
  public Optional<Sum> sum(String id) {
    return all.stream().filter(sum -> sum.id().equals(id)).findFirst();
  }

  /** All ids, in order. */
  public List<String> ids() {
    return all.stream().map(Sum::id).toList();
  }
}
