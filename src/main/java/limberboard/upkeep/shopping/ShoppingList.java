package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.Fitting;
import limberboard.boat.Stock;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.rigging.RopeTotal;
import limberboard.workings.QuantityWords;
import limberboard.workings.Workings;

/**
 * Everything to get for chosen work on one boat, and for ropes that are made anew. What two of them
 * take for the same thing is counted once. Immutable.
 *
 * @param fitting the boat on the day of buying
 * @param jobs the work, by day
 * @param ropes the ropes, by day
 * @param lines materials, by shelf and then by title
 * @param otherRopes ropes whose kind no page describes, by kind: neither packs nor stock are known
 * @param tools tools, by title
 * @param warnings what must not be mixed, the worst first
 * @param leftOut work and ropes that nothing is bought for
 * @param missing ids of materials whose page is missing or cannot be read
 * @param cautionsOf tells the cautions of the work and of what is bought for it
 */
public record ShoppingList(
    Fitting fitting,
    List<Job> jobs,
    List<NewRope> ropes,
    List<ShoppingLine> lines,
    List<RopeTotal> otherRopes,
    List<ToolLine> tools,
    List<MixWarning> warnings,
    List<LeftOut> leftOut,
    List<String> missing,
    WorkCautions cautionsOf) {
  /** Copies the lists. */
  public ShoppingList {
    jobs = List.copyOf(jobs);
    ropes = List.copyOf(ropes);
    lines = List.copyOf(lines);
    otherRopes = List.copyOf(otherRopes);
    tools = List.copyOf(tools);
    warnings = List.copyOf(warnings);
    leftOut = List.copyOf(leftOut);
    missing = List.copyOf(missing);
  }

  /**
   * The list for some work and some ropes.
   *
   * @param wanted the work and the ropes, in any order
   * @param fitting the boat on the day of buying
   * @param stock what is in its stock
   * @param library where materials are looked up
   */
  public static ShoppingList of(
      List<? extends BoughtFor> wanted, Fitting fitting, Stock stock, Library library) {
    List<BoughtFor> byDay = new ArrayList<>(wanted);
    byDay.sort(Comparator.comparing(BoughtFor::day).thenComparing(BoughtFor::title));
    List<Job> jobs = of(Job.class, byDay);
    List<NewRope> ropes = of(NewRope.class, byDay);
    Needs needs =
        new Needs(
            library, fitting, new Workings(Optional.of(fitting.boat()), QuantityWords.METRIC));
    byDay.forEach(needs::add);
    Chosen chosen = new Chosen(library, fitting, jobsOf(needs, library), stock);
    SharedUses shared = new SharedUses(new Included(jobs, fitting), ropes);
    LineMaker maker = new LineMaker(stock, fitting.on(), new Substitutes(chosen, fitting.on()));
    List<ShoppingLine> lines = new ArrayList<>();
    needs
        .uses()
        .forEach(
            (id, uses) ->
                library.material(id).ifPresent(p -> lines.add(maker.of(p, shared.of(uses)))));
    lines.sort(
        Comparator.comparing((ShoppingLine line) -> line.material().details().group())
            .thenComparing(line -> line.material().title()));
    List<ToolLine> tools = new ArrayList<>(needs.tools());
    tools.sort(Comparator.comparing(line -> line.tool().title()));
    return new ShoppingList(
        fitting,
        jobs,
        ropes,
        lines,
        RopeTotal.of(needs.withoutPage()),
        tools,
        MixRules.judge(chosen),
        needs.leftOut(),
        needs.missing(),
        WorkCautions.on(library, fitting));
  }

  private static <T extends BoughtFor> List<T> of(Class<T> kind, List<BoughtFor> wanted) {
    return wanted.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Map<Page<Material>, List<BoughtFor>> jobsOf(Needs needs, Library library) {
    Map<Page<Material>, List<BoughtFor>> jobs = new LinkedHashMap<>();
    needs
        .uses()
        .forEach(
            (id, uses) ->
                library
                    .material(id)
                    .ifPresent(
                        page -> jobs.put(page, uses.stream().map(Usage::by).distinct().toList())));
    needs.tools().forEach(line -> jobs.put(line.tool(), List.copyOf(line.jobs())));
    return jobs;
  }

  /**
   * The cautions of what is bought and worked with, then those of the work itself, each because of
   * the first that brings it in. Work that is not for the boat brings in none.
   */
  public List<WorkCaution> cautions() {
    List<List<WorkCaution>> all = new ArrayList<>();
    lines.forEach(line -> all.add(cautions(line)));
    all.add(cautionsOf.ofMaterials(tools.stream().map(ToolLine::tool).toList()));
    jobs.forEach(job -> all.add(cautions(job)));
    return WorkCautions.joined(all);
  }

  /** The cautions of so much of a material as all the work takes. */
  public List<WorkCaution> cautions(ShoppingLine line) {
    boolean known = line.open().isEmpty() && line.uses().stream().anyMatch(Usage::isReckoned);
    return cautionsOf.ofMaterial(
        line.material(), known ? OptionalDouble.of(line.needed()) : OptionalDouble.empty());
  }

  /** The cautions of what uses a material: those of the work; a rope has those of its material. */
  public List<WorkCaution> cautions(BoughtFor wanted) {
    return wanted instanceof Job job ? cautions(job) : List.of();
  }

  /** The cautions of one of the jobs; none where it is not for the boat. */
  public List<WorkCaution> cautions(Job job) {
    return fitting.fits(job.work().head().fits())
        ? cautionsOf.of(job.work()).stream()
            .map(caution -> caution.because(job.work().title()))
            .toList()
        : List.of();
  }

  /** Lines of what is bought and not in stock. */
  public List<ShoppingLine> toGet() {
    return lines.stream()
        .filter(line -> line.material().details().isBought() && line.isToGet())
        .toList();
  }

  /** Of what is to get, what is needed in any case, in whole or in part. */
  public List<ShoppingLine> toGetAnyway() {
    return toGet().stream().filter(line -> !line.isLookFirst()).toList();
  }

  /** Of what is to get, what a look or a question may show not to be needed at all. */
  public List<ShoppingLine> toGetAfterLook() {
    return toGet().stream().filter(ShoppingLine::isLookFirst).toList();
  }

  /** Lines of what the stock has, or the tap. */
  public List<ShoppingLine> there() {
    return lines.stream().filter(line -> !toGet().contains(line)).toList();
  }
}
