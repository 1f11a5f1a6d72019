package limberboard.desktop.upkeep.state;

import java.util.List;
import java.util.function.Consumer;
import limberboard.upkeep.plan.WorkPlan;

/**
 * Carries ticked work and ticked ropes to where they are shopped for. For the event thread only.
 */
public final class TickedWork {
  private Consumer<List<String>> shop = works -> {};
  private Consumer<WorkPlan> shopPlan = plan -> {};
  private Consumer<List<AskedRope>> shopRopes = ropes -> {};
  private Runnable go = () -> {};

  /**
   * Says who takes the work.
   *
   * @param action takes the ids of its pages
   */
  public void onShop(Consumer<List<String>> action) {
    shop = action;
  }

  /** Says who takes the work of a plan. */
  public void onShopPlan(Consumer<WorkPlan> action) {
    shopPlan = action;
  }

  /** Says who takes the ropes. */
  public void onShopRopes(Consumer<List<AskedRope>> action) {
    shopRopes = action;
  }

  /** Says how one gets there. */
  public void onGo(Runnable action) {
    go = action;
  }

  /** Shops for this work and no other. */
  public void shop(List<String> works) {
    shop.accept(works);
    go.run();
  }

  /** Shops for the work of this plan and no other, on its days. */
  public void shop(WorkPlan plan) {
    shopPlan.accept(plan);
    go.run();
  }

  /** Shops for these ropes and no others, beside the work that is shopped for. */
  public void shopRopes(List<AskedRope> ropes) {
    shopRopes.accept(ropes);
    go.run();
  }
}
