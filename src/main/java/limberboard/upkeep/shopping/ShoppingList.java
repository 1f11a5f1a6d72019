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
import limberboard.workings.QuantityWords;
import limberboard.workings.Workings;

/**
 * Everything to get for chosen work on one boat. Immutable.
 *
 * @param fitting the boat on the day of buying
 * @param jobs the work, by day
 * @param lines materials, by shelf and then by title
 * @param tools tools, by title
 * @param warnings what must not be mixed, the worst first
 * @param leftOut work that nothing is bought for
 * @param missing ids of materials whose page is missing or cannot be read
 * @param cautionsOf tells the cautions of the work and of what is bought for it
 */
public record ShoppingList(
    Fitting fitting,
    List<Job> jobs,
    List<ShoppingLine> lines,
    List<ToolLine> tools,
    List<MixWarning> warnings,
    List<LeftOut> leftOut,
    List<String> missing,
    WorkCautions cautionsOf) {
  /** Copies the lists. */
  public ShoppingList {
    jobs = List.copyOf(jobs);
    lines = List.copyOf(lines);
    tools = List.copyOf(tools);
    warnings = List.copyOf(warnings);
    leftOut = List.copyOf(leftOut);
    missing = List.copyOf(missing);
  }

  /**
   * The list for some work.
   *
   * @param jobs the work, in any order
   * @param fitting the boat on the day of buying
   * @param stock what is in its stock
   * @param library where materials are looked up
   */
  public static ShoppingList of(List<Job> jobs, Fitting fitting, Stock stock, Library library) {
    List<Job> byDay = new ArrayList<>(jobs);
    byDay.sort(Comparator.comparing(Job::day).thenComparing(job -> job.work().title()));
    Needs needs =
        new Needs(
            library, fitting, new Workings(Optional.of(fitting.boat()), QuantityWords.METRIC));
    byDay.forEach(needs::add);
    Chosen chosen = new Chosen(library, fitting, jobsOf(needs, library), stock);
    LineMaker maker = new LineMaker(stock, fitting.on(), new Substitutes(chosen, fitting.on()));
    List<ShoppingLine> lines = new ArrayList<>();
    needs
        .uses()
        .forEach((id, uses) -> library.material(id).ifPresent(p -> lines.add(maker.of(p, uses))));
    lines.sort(
        Comparator.comparing((ShoppingLine line) -> line.material().details().group())
            .thenComparing(line -> line.material().title()));
    List<ToolLine> tools = new ArrayList<>(needs.tools());
    tools.sort(Comparator.comparing(line -> line.tool().title()));
    return new ShoppingList(
        fitting,
        byDay,
        lines,
        tools,
        MixRules.judge(chosen),
        needs.leftOut(),
        needs.missing(),
        WorkCautions.on(library, fitting));
  }

  private static Map<Page<Material>, List<Job>> jobsOf(Needs needs, Library library) {
    Map<Page<Material>, List<Job>> jobs = new LinkedHashMap<>();
    needs
        .uses()
        .forEach(
            (id, uses) ->
                library
                    .material(id)
                    .ifPresent(
                        page -> jobs.put(page, uses.stream().map(Usage::job).distinct().toList())));
    needs.tools().forEach(line -> jobs.put(line.tool(), line.jobs()));
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

  /** Lines of what the stock has, or the tap. */
  public List<ShoppingLine> there() {
    return lines.stream().filter(line -> !toGet().contains(line)).toList();
  }
}
