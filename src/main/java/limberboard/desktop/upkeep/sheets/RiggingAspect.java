package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import limberboard.boat.Workspace;
import limberboard.desktop.base.View;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.print.page.CutPage;
import limberboard.print.sheet.RiggingCsv;
import limberboard.print.sheet.RiggingSheet;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.Upkeep;

/** Every rope of the boat, with its length, its thickness and the sums. */
public final class RiggingAspect implements View {
  private final SheetPanel panel;

  /** The aspect. */
  public RiggingAspect(UpkeepTools tools) {
    panel =
        new SheetPanel(
            "rigging",
            new SheetModel<>(
                tools.upkeep(), tools.place().background(), Optional.empty(), RiggingAspect::make),
            tools);
  }

  /** The sheet of a boat; there is nothing to choose. */
  static Made make(Workspace workspace, Upkeep upkeep, Optional<?> choice) {
    RunningRigging rigging = RunningRigging.of(workspace.library(), upkeep.fitting());
    CutPage sheet = new RiggingSheet(workspace.library()).of(rigging);
    return new Made(
        "rigging-" + upkeep.fitting().boat().id(),
        sheet,
        () -> sheet,
        () -> new RiggingCsv().render(rigging),
        rigging.ropes().isEmpty() ? nothing(upkeep) : "");
  }

  private static String nothing(Upkeep upkeep) {
    return "The page of the "
        + upkeep.fitting().boat().model().title()
        + " names no ropes yet. A model’s page lists them in its header, under ropes; their lengths"
        + " follow from the rig’s dimensions.";
  }

  @Override
  public Name name() {
    return new Name("rigging", "Rigging", 'R');
  }

  @Override
  public Optional<Runnable> print() {
    return panel.printing();
  }

  @Override
  public Optional<Find> find() {
    return panel.finding();
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(panel.region());
  }
}
