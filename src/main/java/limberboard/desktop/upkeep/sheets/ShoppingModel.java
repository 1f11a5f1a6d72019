package limberboard.desktop.upkeep.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.sheet.RiggingWords;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.shopping.BoughtFor;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.NewRope;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingList;

/** What to get for chosen work of a season, and for chosen ropes. For the event thread only. */
final class ShoppingModel {
  private static final int AHEAD = 2;
  private final UpkeepModel upkeep;
  private final SheetModel<ShoppingChoice, Shopped> sheet;

  ShoppingModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.sheet = new SheetModel<>(upkeep, background, ShoppingChoice.first(), ShoppingModel::make);
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
      sheet.choose(sheet.choice().only(boat(), Optional.of(works)));
    } else {
      leave(works);
    }
  }

  /** Shops for this work and nothing else, whenever it is planned. */
  void chooseOnly(List<String> works) {
    sheet.choose(sheet.choice().only(boat(), Optional.of(Set.copyOf(works))));
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
    return upkeep.upkeep().map(ShoppingModel::seasons).orElse(List.of());
  }

  /** The year in which the season begins. */
  int year() {
    return upkeep.upkeep().map(known -> year(known, sheet.choice())).orElse(0);
  }

  private String boat() {
    return upkeep.boat().map(known -> known.id()).orElse("");
  }

  private static List<AfloatSeason> seasons(Upkeep upkeep) {
    int first = upkeep.thisSeason().year();
    return IntStream.rangeClosed(first, first + AHEAD).mapToObj(upkeep.seasons()::season).toList();
  }

  private static int year(Upkeep upkeep, ShoppingChoice choice) {
    List<AfloatSeason> offered = seasons(upkeep);
    return choice
        .season()
        .filter(year -> offered.stream().anyMatch(season -> season.year() == year))
        .orElse(offered.get(0).year());
  }

  private static Shopped make(Workspace workspace, Upkeep upkeep, ShoppingChoice choice) {
    int year = year(upkeep, choice);
    String boat = upkeep.fitting().boat().id();
    List<Job> jobs = new ArrayList<>(SeasonJobs.of(upkeep, Optional.of(year)));
    jobs.addAll(others(upkeep, jobs, choice.only().getOrDefault(boat, Set.of())));
    List<Job> chosen =
        jobs.stream().filter(job -> choice.shopsFor(boat, year, job.work().id())).toList();
    ShoppingChoice.Ropes asked = choice.ropes(boat);
    List<Rope> known = RunningRigging.of(workspace.library(), upkeep.fitting()).ropes();
    List<Rope> ropes = known.stream().filter(rope -> asked.asksFor(rope.id())).toList();
    List<BoughtFor> wanted = new ArrayList<>(chosen);
    ropes.stream()
        .filter(rope -> asked.shopsFor(rope.id()))
        .forEach(rope -> wanted.add(new NewRope(rope, upkeep.fitting().on())));
    ShoppingList list =
        ShoppingList.of(
            wanted,
            upkeep.fitting(),
            workspace.stock(upkeep.fitting().boat()),
            workspace.library());
    ShoppingSheet sheets = new ShoppingSheet(workspace.library());
    String season = upkeep.seasons().season(year).label();
    Made made =
        new Made(
            "shopping-" + boat + "-" + year,
            sheets.of(list),
            () -> sheets.onPaper(list),
            () -> new ShoppingCsv().render(list),
            nothing(jobs, ropes, wanted, season));
    return new Shopped(
        offers(jobs), ropes.stream().map(ShoppingModel::offer).toList(), gone(asked, ropes), made);
  }

  private static RopeOffer offer(Rope rope) {
    return new RopeOffer(rope.id(), rope.title(), RiggingWords.cut(rope));
  }

  private static List<String> gone(ShoppingChoice.Ropes asked, List<Rope> found) {
    List<String> there = found.stream().map(Rope::id).toList();
    return asked.asked().stream()
        .filter(rope -> !there.contains(rope.id()))
        .map(AskedRope::title)
        .toList();
  }

  /** Work that was asked for and is not planned for the season: on the day it is planned for. */
  private static List<Job> others(Upkeep upkeep, List<Job> jobs, Set<String> wanted) {
    Set<String> planned = jobs.stream().map(job -> job.work().id()).collect(Collectors.toSet());
    return upkeep.all().stream()
        .filter(due -> wanted.contains(due.work().id()) && planned.add(due.work().id()))
        .map(due -> new Job(due.work(), 1, due.plan()))
        .toList();
  }

  private static List<Offer> offers(List<Job> jobs) {
    Map<String, List<Job>> byWork = new LinkedHashMap<>();
    jobs.forEach(job -> byWork.computeIfAbsent(job.work().id(), id -> new ArrayList<>()).add(job));
    return byWork.values().stream()
        .map(
            all ->
                new Offer(
                    all.get(0).work().id(),
                    all.get(0).work().title(),
                    all.stream().map(Job::day).sorted().toList()))
        .sorted(
            Comparator.comparing((Offer offer) -> offer.days().get(0)).thenComparing(Offer::title))
        .toList();
  }

  private static String nothing(
      List<Job> jobs, List<Rope> ropes, List<BoughtFor> wanted, String season) {
    if (jobs.isEmpty() && ropes.isEmpty()) {
      return "Nothing is planned for season " + season + ", so there is nothing to get.";
    } else if (!wanted.isEmpty()) {
      return "";
    }
    return (ropes.isEmpty() ? "No work is chosen." : "No work and no rope is chosen.")
        + " Tick what you shop for.";
  }
}
