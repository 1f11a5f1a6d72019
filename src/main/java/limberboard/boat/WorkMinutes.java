package limberboard.boat;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.BoatSize;
import limberboard.library.page.Procedure.RoundWork;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;

/**
 * How long work takes on a boat: a page's minutes, in proportion to the boat's size where the page
 * says which size they stand for. Where her model does not know that measure they stand as they
 * are. Whole minutes, from twenty on rounded to five, because they are estimates. Immutable.
 *
 * @param library the pages, for the work of rounds
 * @param model the boat's model
 */
public record WorkMinutes(Library library, Model model) {
  private static final int EXACT_BELOW = 20;
  private static final int ROUNDED_TO = 5;

  /** The minutes of work on this boat. */
  public static WorkMinutes on(Library library, Fitting fitting) {
    return new WorkMinutes(library, fitting.boat().model().details());
  }

  /** The work with the minutes that it takes on this boat; the page itself where they are those. */
  public Page<Procedure> of(Page<Procedure> page) {
    Procedure work = page.details();
    if (work.minutesFor().isEmpty() && !work.isRound()) {
      return page;
    }
    Procedure here = work.taking(of(work), work.round().stream().map(this::within).toList());
    return new Page<>(page.id(), page.path(), page.head(), here, page.body(), page.bodyLine());
  }

  /** What the work itself takes on this boat, 1 minute at least. */
  public int of(Procedure work) {
    return minutes(work.minutes(), work.minutesFor());
  }

  private RoundWork within(RoundWork each) {
    Optional<BoatSize> size =
        library.procedure(each.work()).flatMap(page -> page.details().minutesFor());
    return each.minutes().isEmpty() || size.isEmpty()
        ? each
        : new RoundWork(each.work(), OptionalInt.of(minutes(each.minutes().getAsInt(), size)));
  }

  private int minutes(int written, Optional<BoatSize> size) {
    OptionalDouble times = size.map(this::times).orElse(OptionalDouble.empty());
    if (times.isEmpty()) {
      return written;
    }
    double exact = written * times.getAsDouble();
    long rounded =
        exact < EXACT_BELOW ? Math.round(exact) : Math.round(exact / ROUNDED_TO) * ROUNDED_TO;
    return (int) Math.max(1, Math.min(rounded, Procedure.MOST_MINUTES));
  }

  /** How many times as large this boat is; empty where nobody can say. */
  private OptionalDouble times(BoatSize size) {
    Amount.Fixed here = model.measures().get(size.measure());
    if (here == null) {
      return OptionalDouble.empty();
    }
    Optional<KnownUnit> unit = KnownUnit.ownOf(size.of().quantity());
    OptionalDouble of =
        unit.map(known -> known.of(size.of().quantity())).orElseGet(OptionalDouble::empty);
    OptionalDouble is =
        unit.map(known -> known.of(here.quantity())).orElseGet(OptionalDouble::empty);
    return of.isPresent() && of.getAsDouble() > 0 && is.isPresent() && is.getAsDouble() > 0
        ? OptionalDouble.of(is.getAsDouble() / of.getAsDouble())
        : OptionalDouble.empty();
  }
}
