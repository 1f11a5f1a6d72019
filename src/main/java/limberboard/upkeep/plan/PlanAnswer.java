package limberboard.upkeep.plan;

/** What comes of asking for a plan. */
public sealed interface PlanAnswer {

  /**
   * A plan.
   *
   * @param plan the plan
   */
  record Made(WorkPlan plan) implements PlanAnswer {}

  /**
   * No plan.
   *
   * @param why why not, and what would do, in sentences
   */
  record Refused(String why) implements PlanAnswer {}
}
