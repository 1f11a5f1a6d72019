package limberboard.desktop.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.desktop.tree.TreePanel;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.trace.NextStep;

/**
 * The cautions of a step that do not stand above the whole trace anyway.
 *
 * @param model the trace
 */
record StepCautions(TraceModel model) implements TreePanel.Cautions {
  @Override
  public List<Page<Caution>> of(NextStep step) {
    return step.cautions().stream()
        .map(WorkCaution::page)
        .filter(page -> !model.cautions().contains(page))
        .toList();
  }
}
