package limberboard.upkeep.shopping;

import java.time.LocalDate;

/** What something is bought for: work, or a rope that is made anew. */
public sealed interface BoughtFor permits Job, NewRope {
  /** The id of the work's page, or of the rope on the model's page. */
  String id();

  /** What a person calls it. */
  String title();

  /** How often it is done, at least 1. */
  int times();

  /** The day on which it is needed. */
  LocalDate day();
}
