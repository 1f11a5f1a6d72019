package limberboard.desktop.upkeep.sums;

import java.util.List;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Sums;

/** The sums of the trade, with the boat's numbers in them and room for one's own. */
public final class WorkingsAspect implements View {
  private static final int LEAST_WIDTH = 880;
  private static final int LEAST_REST = 560;
  private final WorkingsModel model;
  private final CardList<Sum> list =
      new CardList<>("Workings", sum -> Card.of(sum.text().title(), ""));
  private final SumFields fields;
  private final SumResult result;
  private final Sides sides;

  /** The aspect. */
  public WorkingsAspect(UpkeepTools tools) {
    model = new WorkingsModel(tools.upkeep(), Sums.ofTheTrade());
    fields = new SumFields(model);
    result = new SumResult(model);
    list.setName("sums");
    list.framed();
    list.show(model.sums());
    list.setSelectedValue(model.chosen(), true);
    list.addListSelectionListener(e -> list.selected().ifPresent(sum -> model.choose(sum.id())));
    Sides rest =
        new Sides(
            LEAST_REST,
            "Numbers",
            fields.scrolling(),
            "Result",
            result.scrolling(),
            "upkeep-sum",
            0.42,
            tools.place().dividers());
    rest.setOpaque(false);
    sides =
        new Sides(
            LEAST_WIDTH,
            "Workings",
            list.scrolling(),
            "The sum",
            rest,
            "upkeep-workings",
            0.25,
            tools.place().dividers());
    list.onChoose(sum -> sides.showOther());
  }

  @Override
  public Name name() {
    return new Name("workings", "Workings", 'W');
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(list, fields.region(), result);
  }
}
