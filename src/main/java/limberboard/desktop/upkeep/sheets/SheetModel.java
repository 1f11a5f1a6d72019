package limberboard.desktop.upkeep.sheets;

import java.util.Optional;
import java.util.function.Supplier;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.page.CutPage;
import limberboard.upkeep.Upkeep;

/**
 * A sheet of the chosen boat on the chosen day, without Swing: worked out by the background while
 * somebody looks at it, and anew when boat, day or what is chosen change. What was worked out
 * before stays until the new one is there, unless it is of another boat. For the event thread only.
 *
 * @param <C> what can be chosen; compared by {@code equals}
 * @param <T> what is worked out
 */
public final class SheetModel<C, T extends SheetModel.HasSheet> extends Observed {
  private final UpkeepModel upkeep;
  private final Latest latest;
  private final Making<C, T> making;
  private C choice;
  private boolean attended;
  private Optional<Order<C>> asked = Optional.empty();
  private Optional<T> made = Optional.empty();
  private String boat = "";

  /**
   * A model that nobody looks at yet.
   *
   * @param first what is chosen at first
   */
  SheetModel(UpkeepModel upkeep, Background background, C first, Making<C, T> making) {
    this.upkeep = upkeep;
    this.latest = new Latest(background);
    this.making = making;
    this.choice = first;
    upkeep.onChange(this::follow);
  }

  /** Works a sheet out, off the event thread. */
  @FunctionalInterface
  interface Making<C, T> {
    T make(Workspace workspace, Upkeep upkeep, C choice);
  }

  /** Something with a sheet in it. */
  interface HasSheet {
    Made sheet();
  }

  /**
   * A sheet.
   *
   * @param name a file name without ending
   * @param screen the sheet as it is read in the window
   * @param paper makes the sheet for paper; any thread
   * @param csv makes the table for other programs; any thread
   * @param nothing what to say when there is nothing in it, otherwise empty
   */
  record Made(
      String name, CutPage screen, Supplier<CutPage> paper, Supplier<String> csv, String nothing)
      implements HasSheet {
    @Override
    public Made sheet() {
      return this;
    }
  }

  private record Order<C>(Upkeep upkeep, C choice) {
    boolean isSame(Order<C> other) {
      return upkeep == other.upkeep && choice.equals(other.choice);
    }
  }

  /** What is chosen. */
  C choice() {
    return choice;
  }

  /** Chooses. */
  void choose(C other) {
    if (!other.equals(choice)) {
      choice = other;
      follow();
    }
  }

  /** Whether somebody looks at it; while nobody does, nothing is worked out. */
  public void attend(boolean looking) {
    if (looking != attended) {
      attended = looking;
      follow();
    }
  }

  /** What was worked out last for the chosen boat. */
  Optional<T> made() {
    return made;
  }

  private void follow() {
    String now = upkeep.boat().map(known -> known.id()).orElse("");
    if (!now.equals(boat)) {
      boat = now;
      latest.drop();
      asked = Optional.empty();
      made = Optional.empty();
    }
    if (attended) {
      upkeep.upkeep().map(known -> new Order<>(known, choice)).ifPresent(this::work);
    }
    tell();
  }

  private void work(Order<C> wanted) {
    if (asked.filter(wanted::isSame).isEmpty()) {
      asked = Optional.of(wanted);
      Workspace workspace = upkeep.workspace();
      latest.run(
          "Working out the sheet",
          () -> making.make(workspace, wanted.upkeep(), wanted.choice()),
          this::take,
          () -> asked = Optional.empty());
    }
  }

  private void take(T found) {
    made = Optional.of(found);
    tell();
  }
}
