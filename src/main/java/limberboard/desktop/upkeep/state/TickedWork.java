package limberboard.desktop.upkeep.state;

import java.util.List;
import java.util.function.Consumer;

/** Carries ticked work to where it is shopped for. For the event thread only. */
public final class TickedWork {
  private Consumer<List<String>> shop = works -> {};
  private Runnable go = () -> {};

  /**
   * Says who takes the work.
   *
   * @param action takes the ids of its pages
   */
  public void onShop(Consumer<List<String>> action) {
    shop = action;
  }

  /** Says how one gets there. */
  public void onGo(Runnable action) {
    go = action;
  }

  /** Shops for this work and nothing else. */
  public void shop(List<String> works) {
    shop.accept(works);
    go.run();
  }
}
