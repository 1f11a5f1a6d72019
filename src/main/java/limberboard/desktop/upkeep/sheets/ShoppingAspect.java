package limberboard.desktop.upkeep.sheets;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.words.CountWords;
import limberboard.words.DayWords;

/** What to get for the work of a season, with that work beside it to choose from. */
public final class ShoppingAspect {
  private static final int LEAST_WIDTH = 820;
  private final ShoppingModel model;
  private final SeasonBox season;
  private final OfferList offers;
  private final Wrapped count = Text.plain("");
  private final Wrapped gone = Text.plain("");
  private final JButton all;
  private final JButton none;
  private final JButton noRopes;
  private final View view;

  /** The aspect. */
  public ShoppingAspect(UpkeepTools tools, TickedWork wanted) {
    model = new ShoppingModel(tools.upkeep(), tools.place().background());
    season = new SeasonBox("shopping-season", model::season);
    offers = new OfferList(model);
    all = Buttons.plain("All work", "shopping-all", () -> model.chooseAll(true));
    all.getAccessibleContext().setAccessibleName("Shop for all work of the season");
    none = Buttons.plain("No work", "shopping-none", () -> model.chooseAll(false));
    none.getAccessibleContext().setAccessibleName("Shop for no work");
    noRopes = Buttons.plain("Take the ropes out", "shopping-no-ropes", this::takeRopesOut);
    gone.setName("shopping-gone");
    SheetPanel sheet = new SheetPanel("shopping", model.sheet(), tools, season);
    view =
        new SheetView(
            tools,
            new View.Name("shopping", "Shopping", 'S'),
            "What to get",
            sheet,
            new SheetView.Beside("Work", work(), offers::region, LEAST_WIDTH, 0.28),
            Optional.of(season));
    wanted.onShop(model::chooseOnly);
    wanted.onShopPlan(model::choosePlan);
    wanted.onShopRopes(model::askForRopes);
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private JComponent work() {
    Column head = new Column(6).padded(4, 8, 0, 0);
    head.add(Text.heading("What you shop for"));
    head.add(count);
    head.add(gone);
    head.add(Row.wrapping(8, all, none, noRopes));
    JPanel work = new JPanel(new BorderLayout(0, 6));
    work.setOpaque(false);
    work.add(head, BorderLayout.NORTH);
    work.add(offers.scrolling(), BorderLayout.CENTER);
    return work;
  }

  private void takeRopesOut() {
    model.askForRopes(List.of());
    Later.focus(offers.region());
  }

  private void refresh() {
    season.show(model.seasons(), model.year());
    long works = model.offers().stream().filter(offer -> model.isChosen(offer.id())).count();
    long ropes = model.ropes().stream().filter(rope -> model.isRopeChosen(rope.id())).count();
    int known = model.offers().size();
    int asked = model.ropes().size();
    List<String> counts = new ArrayList<>();
    if (asked > 0) {
      counts.add(ropes + " of " + CountWords.of(asked, "rope"));
    }
    Optional<WorkPlan> plan = model.plan();
    if (known > 0 && plan.isPresent()) {
      counts.add(
          works
              + " of "
              + CountWords.of(known, "job")
              + " of the plan until "
              + DayWords.of(plan.get().wish().until())
              + ", each of a round by itself");
    } else if (known > 0) {
      counts.add(works + " of " + CountWords.of(known, "piece of work", "pieces of work, by day"));
    }
    count.setText(
        counts.isEmpty() ? "" : String.join(" and ", counts) + ". Untick what needs no shopping.");
    gone.setText(RopeTicks.gone(model.gone()));
    gone.setVisible(!model.gone().isEmpty());
    all.setEnabled(works < known || plan.isPresent());
    none.setEnabled(works > 0);
    noRopes.setVisible(asked > 0 || !model.gone().isEmpty());
  }

  /** What is put into the window. */
  public View view() {
    return view;
  }
}
