package limberboard.desktop.trace;

import java.util.List;
import limberboard.desktop.tree.TreePanel;
import limberboard.library.Caution;
import limberboard.library.Page;
import limberboard.trace.NextStep;

/**
 * The cautions of a step that do not stand above the whole trace anyway.
 *
 * @param model the trace
 * @param names looks cautions up
 */
record StepCautions(TraceModel model, Names names) implements TreePanel.Cautions {
  @Override
  public List<Page<Caution>> of(NextStep step) {
    return names.cautions(step).stream().filter(page -> !model.cautions().contains(page)).toList();
  }
}
