package limberboard.drill.play;

import java.util.Optional;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;

/** Calls the yard at once, and tells it nothing. */
public record CallsTheYard() implements Player {
  @Override
  public DrillStep next(DrillRun run) {
    return new DrillStep.HandOver(Optional.empty());
  }
}
