package limberboard.desktop.trace;

import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.desktop.tree.TreePanel;
import limberboard.trace.NextStep;

/**
 * The cautions of a step that do not stand above the whole trace anyway.
 *
 * @param model the trace
 */
record StepCautions(TraceModel model) implements TreePanel.Cautions {
  @Override
  public List<WorkCaution> of(NextStep step) {
    return model.cautions(step);
  }

  @Override
  public boolean isRead(WorkCaution caution) {
    return model.read().isRead(caution);
  }
}
