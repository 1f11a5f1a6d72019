package limberboard.desktop.upkeep.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingList;

/** What to get for chosen work of a season. For the event thread only. */
final class ShoppingModel {
  private static final int AHEAD = 2;
  private final UpkeepModel upkeep;
  private final SheetModel<Choice, Shopped> sheet;

  ShoppingModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    this.sheet =
        new SheetModel<>(
            upkeep,
            background,
            new Choice(Optional.empty(), Map.of(), Map.of()),
            ShoppingModel::make);
  }

  /**
   * What is shopped for.
   *
   * @param season the year in which the season begins; empty for this or the coming one
   * @param left work that is not shopped for, by boat and season
   * @param only the only work that is shopped for, by boat, where that was asked
   */
  record Choice(
      Optional<Integer> season, Map<String, Set<String>> left, Map<String, Set<String>> only) {
    /** Copies the maps. */
    Choice {
      left = Map.copyOf(left);
      only = Map.copyOf(only);
    }

    Set<String> left(String boat, int year) {
      return left.getOrDefault(boat + " " + year, Set.of());
    }

    boolean shopsFor(String boat, int year, String work) {
      return only.containsKey(boat)
          ? only.get(boat).contains(work)
          : !left(boat, year).contains(work);
    }

    Choice only(String boat, Optional<Set<String>> works) {
      Map<String, Set<String>> other = new TreeMap<>(only);
      works.ifPresentOrElse(ids -> other.put(boat, Set.copyOf(ids)), () -> other.remove(boat));
      return new Choice(season, left, other);
    }

    Choice leaving(String boat, int year, Set<String> works) {
      Map<String, Set<String>> other = new TreeMap<>(left);
      other.put(boat + " " + year, Set.copyOf(works));
      return new Choice(season, other, only);
    }
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
   * What came of it.
   *
   * @param offers all work of the season
   * @param sheet the list for what is chosen of it
   */
  record Shopped(List<Offer> offers, Made sheet) implements HasSheet {
    /** Copies the list. */
    Shopped {
      offers = List.copyOf(offers);
    }
  }

  /** The sheet. */
  SheetModel<Choice, Shopped> sheet() {
    return sheet;
  }

  /** All work of the season, by day. */
  List<Offer> offers() {
    return sheet.made().map(Shopped::offers).orElse(List.of());
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
    Choice now = sheet.choice().only(boat(), Optional.empty());
    sheet.choose(new Choice(Optional.of(year), now.left(), now.only()));
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

  private static int year(Upkeep upkeep, Choice choice) {
    List<AfloatSeason> offered = seasons(upkeep);
    return choice
        .season()
        .filter(year -> offered.stream().anyMatch(season -> season.year() == year))
        .orElse(offered.get(0).year());
  }

  private static Shopped make(Workspace workspace, Upkeep upkeep, Choice choice) {
    int year = year(upkeep, choice);
    String boat = upkeep.fitting().boat().id();
    List<Job> jobs = new ArrayList<>(SeasonJobs.of(upkeep, Optional.of(year)));
    jobs.addAll(others(upkeep, jobs, choice.only().getOrDefault(boat, Set.of())));
    List<Job> chosen =
        jobs.stream().filter(job -> choice.shopsFor(boat, year, job.work().id())).toList();
    ShoppingList list =
        ShoppingList.of(
            chosen,
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
            nothing(jobs, chosen, season));
    return new Shopped(offers(jobs), made);
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

  private static String nothing(List<Job> jobs, List<Job> chosen, String season) {
    if (jobs.isEmpty()) {
      return "Nothing is planned for season " + season + ", so there is nothing to get.";
    }
    return chosen.isEmpty() ? "No work is chosen. Tick what you shop for." : "";
  }
}
