package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;

/**
 * The plan for the time there is: what to do on which day, what stays undone, and the lines to be
 * ticked and written into the log.
 */
public final class PlanAspect implements View {
  private static final int LEAST_WIDTH = 860;
  private final PlanModel model;
  private final PlanForm form;
  private final SheetPanel panel;
  private final ListTicks ticks;
  private final JButton shop;
  private final JButton all;
  private final Sides sides;

  /** The aspect. */
  public PlanAspect(UpkeepTools tools, DueModel due, TickedWork wanted) {
    model = new PlanModel(tools.upkeep(), tools.place().background());
    form = new PlanForm(model);
    panel = new SheetPanel("plan", model.sheet(), tools, form.parts().toArray(JComponent[]::new));
    shop = Buttons.plain("Shop for the plan", "plan-shop", () -> wanted.shop(model.works()));
    all =
        Buttons.plain(
            "Tick all",
            "plan-tick-all",
            () -> due.tickAll(model.lines().stream().map(ListModel.Line::due).toList()));
    ticks =
        new ListTicks(
            new ListTicks.Ticked(
                "plan",
                "By day, in the order of the plan. Space ticks what is done, Shift+Space up to"
                    + " here, Enter opens the page.",
                model.sheet(),
                model::lines),
            due,
            wanted,
            tools.place().navigator()::openPage,
            shop,
            all);
    sides =
        new Sides(
            LEAST_WIDTH,
            "The plan",
            panel,
            "Tick off",
            ticks,
            "upkeep-plan",
            0.62,
            tools.place().dividers());
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    form.refresh();
    shop.setEnabled(!model.works().isEmpty());
    all.setEnabled(!model.lines().isEmpty());
  }

  @Override
  public Name name() {
    return new Name("plan", "Plan", 'N');
  }

  @Override
  public Optional<Runnable> print() {
    return model.lines().isEmpty() ? Optional.empty() : panel.printing();
  }

  @Override
  public Optional<Find> find() {
    return panel.finding();
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(form.first(), panel.region(), ticks.region());
  }
}
