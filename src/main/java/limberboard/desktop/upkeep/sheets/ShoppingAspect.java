package limberboard.desktop.upkeep.sheets;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;

/** What to get for the work of a season, with that work beside it to choose from. */
public final class ShoppingAspect implements View {
  private static final int LEAST_WIDTH = 820;
  private final ShoppingModel model;
  private final SeasonBox season;
  private final OfferList offers;
  private final Wrapped count = Text.plain("");
  private final JButton all;
  private final JButton none;
  private final SheetPanel sheet;
  private final Sides sides;

  /** The aspect. */
  public ShoppingAspect(UpkeepTools tools, TickedWork wanted) {
    model = new ShoppingModel(tools.upkeep(), tools.place().background());
    season = new SeasonBox("shopping-season", model::season);
    offers = new OfferList(model);
    all = Buttons.plain("All", "shopping-all", () -> model.chooseAll(true));
    all.getAccessibleContext().setAccessibleName("Shop for all work of the season");
    none = Buttons.plain("None", "shopping-none", () -> model.chooseAll(false));
    none.getAccessibleContext().setAccessibleName("Shop for none of it");
    sheet = new SheetPanel("shopping", model.sheet(), tools, season);
    sides =
        new Sides(
            LEAST_WIDTH,
            "What to get",
            sheet,
            "Work",
            work(),
            "upkeep-shopping",
            0.72,
            tools.place().dividers());
    wanted.onShop(model::chooseOnly);
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private JComponent work() {
    Column head = new Column(6).padded(4, 8, 0, 0);
    head.add(Text.heading("What you shop for"));
    head.add(count);
    head.add(Row.wrapping(8, all, none));
    JPanel work = new JPanel(new BorderLayout(0, 6));
    work.setOpaque(false);
    work.add(head, BorderLayout.NORTH);
    work.add(offers.scrolling(), BorderLayout.CENTER);
    return work;
  }

  private void refresh() {
    season.show(model.seasons(), model.year());
    long chosen = model.offers().stream().filter(offer -> model.isChosen(offer.id())).count();
    int known = model.offers().size();
    count.setText(
        known == 0
            ? ""
            : chosen + " of " + known + " pieces of work, by day. Untick what needs no shopping.");
    all.setEnabled(chosen < known);
    none.setEnabled(chosen > 0);
  }

  @Override
  public Name name() {
    return new Name("shopping", "Shopping", 'S');
  }

  @Override
  public Optional<Runnable> print() {
    return sheet.printing();
  }

  @Override
  public Optional<Find> find() {
    return sheet.finding();
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(season, sheet.region(), offers.region());
  }
}
