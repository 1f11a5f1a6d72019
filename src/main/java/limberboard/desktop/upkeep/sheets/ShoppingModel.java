package limberboard.desktop.upkeep.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.plan.WorkPlan;

/** What to get for chosen work of a season, and for chosen ropes. For the event thread only. */
final class ShoppingModel {
  private final UpkeepModel upkeep;
  private final SheetModel<ShoppingChoice, Shopped> sheet;

  ShoppingModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.sheet = new SheetModel<>(upkeep, background, ShoppingChoice.first(), ShoppingMaker::make);
  }

  /**
   * Work of the season.
   *
   * @param id its page
   * @param days when it is planned, in order; at least one
   */
  record Offer(String id, String title, List<LocalDate> days) {
    /** Copies the list. */
    Offer {
      days = List.copyOf(days);
    }
  }

  /**
   * A rope that was asked for.
   *
   * @param facts how it is cut, and of what
   */
  record RopeOffer(String id, String title, String facts) {}

  /**
   * What came of it.
   *
   * @param offers all work of the season
   * @param ropes the ropes that were asked for and are on the boat's list
   * @param gone titles of those that are not on it any more
   * @param sheet the list for what is chosen of them
   */
  record Shopped(List<Offer> offers, List<RopeOffer> ropes, List<String> gone, Made sheet)
      implements HasSheet {
    /** Copies the lists. */
    Shopped {
      offers = List.copyOf(offers);
      ropes = List.copyOf(ropes);
      gone = List.copyOf(gone);
    }
  }

  /** The sheet. */
  SheetModel<ShoppingChoice, Shopped> sheet() {
    return sheet;
  }

  /** All work of the season, by day. */
  List<Offer> offers() {
    return sheet.made().map(Shopped::offers).orElse(List.of());
  }

  /** The ropes that were asked for, in the order of the boat's list. */
  List<RopeOffer> ropes() {
    return sheet.made().map(Shopped::ropes).orElse(List.of());
  }

  /** Titles of ropes that were asked for and are not on the boat's list any more. */
  List<String> gone() {
    return sheet.made().map(Shopped::gone).orElse(List.of());
  }

  /** Whether this rope is shopped for. */
  boolean isRopeChosen(String id) {
    return chosenRopes().shopsFor(id);
  }

  /** Shops for this rope, which was asked for, or not. */
  void chooseRope(String id, boolean chosen) {
    shopFor(chosenRopes().taking(id, chosen));
  }

  /** Shops for these ropes and no others, beside the work; none takes them all out. */
  void askForRopes(List<AskedRope> ropes) {
    shopFor(new ShoppingChoice.Ropes(ropes, Set.of()));
  }

  private ShoppingChoice.Ropes chosenRopes() {
    return sheet.choice().ropes(boat());
  }

  private void shopFor(ShoppingChoice.Ropes ropes) {
    sheet.choose(sheet.choice().ropes(boat(), ropes));
  }

  /** Whether this work is shopped for. */
  boolean isChosen(String id) {
    return sheet.choice().shopsFor(boat(), year(), id);
  }

  /** Shops for this work, or not. */
  void choose(String id, boolean chosen) {
    Optional<Set<String>> only = Optional.ofNullable(sheet.choice().only().get(boat()));
    Set<String> works = new TreeSet<>(only.orElseGet(() -> sheet.choice().left(boat(), year())));
    if (chosen == only.isPresent()) {
      works.add(id);
    } else {
      works.remove(id);
    }
    if (only.isPresent()) {
      sheet.choose(sheet.choice().within(boat(), works));
    } else {
      leave(works);
    }
  }

  /** Shops for this work and nothing else, whenever it is planned. */
  void chooseOnly(List<String> works) {
    sheet.choose(sheet.choice().only(boat(), Optional.of(Set.copyOf(works))));
  }

  /** Shops for the work of this plan, on its days, and nothing else. */
  void choosePlan(WorkPlan plan) {
    sheet.choose(sheet.choice().plan(boat(), plan));
  }

  /** The plan that is shopped for; empty when it is not for a plan. */
  Optional<WorkPlan> plan() {
    return sheet.choice().plan(boat());
  }

  /** Shops for all work of the season, or for none. */
  void chooseAll(boolean chosen) {
    Set<String> left = chosen ? Set.of() : new TreeSet<>(offers().stream().map(Offer::id).toList());
    sheet.choose(sheet.choice().only(boat(), Optional.empty()).leaving(boat(), year(), left));
  }

  private void leave(Set<String> works) {
    sheet.choose(sheet.choice().leaving(boat(), year(), works));
  }

  /** Chooses the season that begins in this year. */
  void season(int year) {
    sheet.choose(sheet.choice().only(boat(), Optional.empty()).in(year));
  }

  /** The seasons there are to choose from; none before what is due has been worked out. */
  List<AfloatSeason> seasons() {
    return upkeep.upkeep().map(ShoppingMaker::seasons).orElse(List.of());
  }

  /** The year in which the season begins. */
  int year() {
    return upkeep.upkeep().map(known -> ShoppingMaker.year(known, sheet.choice())).orElse(0);
  }

  private String boat() {
    return upkeep.boat().map(known -> known.id()).orElse("");
  }
}
