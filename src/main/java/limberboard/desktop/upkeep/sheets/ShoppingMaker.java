package limberboard.desktop.upkeep.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Offer;
import limberboard.desktop.upkeep.sheets.ShoppingModel.RopeOffer;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Shopped;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.print.sheet.RiggingWords;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingFor;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.plan.PlanJobs;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.BoughtFor;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.NewRope;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingList;

/** Works out what is shopped for, and what could be. Stateless. */
final class ShoppingMaker {
  private static final int AHEAD = 2;

  private ShoppingMaker() {}

  /** The seasons there are to choose from. */
  static List<AfloatSeason> seasons(Upkeep upkeep) {
    int first = upkeep.thisSeason().year();
    return IntStream.rangeClosed(first, first + AHEAD).mapToObj(upkeep.seasons()::season).toList();
  }

  /** The year in which the chosen season begins. */
  static int year(Upkeep upkeep, ShoppingChoice choice) {
    List<AfloatSeason> offered = seasons(upkeep);
    return choice
        .season()
        .filter(year -> offered.stream().anyMatch(season -> season.year() == year))
        .orElse(offered.get(0).year());
  }

  /** Works the list and its offers out; any thread. */
  static Shopped make(Workspace workspace, Upkeep upkeep, ShoppingChoice choice) {
    int year = year(upkeep, choice);
    String boat = upkeep.fitting().boat().id();
    Optional<WorkPlan> plan = choice.plan(boat);
    List<Job> jobs = plan.map(PlanJobs::of).orElseGet(() -> jobs(upkeep, year, choice.only(boat)));
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
            "shopping-" + boat + plan.map(of -> "-plan-" + of.wish().until()).orElse("-" + year),
            plan.map(of -> sheets.of(list, ShoppingFor.plan(of, list)))
                .orElseGet(() -> sheets.of(list)),
            () ->
                plan.map(of -> sheets.onPaper(list, ShoppingFor.plan(of, list)))
                    .orElseGet(() -> sheets.onPaper(list)),
            () -> new ShoppingCsv().render(list),
            nothing(jobs, ropes, wanted, season));
    return new Shopped(
        offers(jobs), ropes.stream().map(ShoppingMaker::offer).toList(), gone(asked, ropes), made);
  }

  /** The work of a season, and what was asked for beside it. */
  private static List<Job> jobs(Upkeep upkeep, int year, Set<String> only) {
    List<Job> jobs = new ArrayList<>(SeasonJobs.of(upkeep, Optional.of(year)));
    jobs.addAll(others(upkeep, jobs, only));
    return jobs;
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
        .map(due -> new Job(due.work(), 1, due.plan(), due.isLookFirst()))
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
