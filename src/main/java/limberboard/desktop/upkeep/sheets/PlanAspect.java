package limberboard.desktop.upkeep.sheets;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;

/**
 * The plan for the time there is: what to do on which day, what stays undone, and the lines to be
 * ticked and written into the log.
 */
public final class PlanAspect {
  private static final int LEAST_WIDTH = 860;
  private final PlanModel model;
  private final PlanForm form;
  private final JButton shop;
  private final JButton all;
  private final SheetPanel panel;
  private final ListTicks ticks;
  private final View view;
  private boolean saving;

  /** The aspect. */
  public PlanAspect(UpkeepTools tools, DueModel due, TickedWork wanted) {
    model = new PlanModel(tools.upkeep(), tools.place().background());
    form = new PlanForm(model, this::fromTheTop);
    JComponent[] parts = form.parts().toArray(JComponent[]::new);
    for (JComponent part : parts) {
      Keys.within(part, "control S", this::planAndSave);
    }
    panel = new SheetPanel("plan", model.sheet(), tools, parts);
    shop =
        Buttons.plain("Shop for the plan", "plan-shop", () -> model.plan().ifPresent(wanted::shop));
    shop.setMnemonic('F');
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
    view =
        new SheetView(
            tools,
            new View.Name("plan", "Plan", 'N'),
            "The plan",
            panel,
            new SheetView.Beside("Tick off", ticks, ticks::region, LEAST_WIDTH, 0.38),
            Optional.of(form.first()));
    model.sheet().onChange(this::refresh);
    refresh();
  }

  /** Another plan is read from its beginning. */
  private void fromTheTop() {
    panel.toTop();
    ticks.toTop();
  }

  /** Plans what is typed, and saves the plan once it is there. */
  private void planAndSave() {
    form.ask();
    saving = true;
    saveOnceThere();
  }

  private void saveOnceThere() {
    if (saving && model.isAnswered()) {
      saving = false;
      if (!model.lines().isEmpty()) {
        Later.run(panel::savePdf);
      }
    }
  }

  private void refresh() {
    saveOnceThere();
    form.refresh();
    shop.setEnabled(!model.lines().isEmpty());
    all.setEnabled(!model.lines().isEmpty());
  }

  /** What is put into the window. */
  public View view() {
    return view;
  }
}
