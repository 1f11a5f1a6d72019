package limberboard.desktop.upkeep.sheets;

import java.util.Optional;
import limberboard.desktop.base.View;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;

/**
 * Every rope of the boat, with its length, its thickness and the sums, and beside it the ropes to
 * be ticked and shopped for.
 */
public final class RiggingAspect {
  private static final int LEAST_WIDTH = 860;
  private final View view;

  /** The aspect. */
  public RiggingAspect(UpkeepTools tools, TickedWork wanted) {
    RiggingModel model = new RiggingModel(tools.upkeep(), tools.place().background());
    RopeTicks ticks = new RopeTicks(model, wanted, tools.place().navigator()::openPage);
    view =
        new SheetView(
            tools,
            new View.Name("rigging", "Rigging", 'R'),
            "The ropes",
            new SheetPanel("rigging", model.sheet(), tools),
            new SheetView.Beside("To renew", ticks.component(), ticks::region, LEAST_WIDTH, 0.34),
            Optional.empty());
  }

  /** What is put into the window. */
  public View view() {
    return view;
  }
}
