package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.rigging.Rope;
import limberboard.workings.Workings;

/** Gathers what jobs need on a boat, by material. For one list, on one thread. */
final class Needs {
  private final Library library;
  private final Fitting fitting;
  private final UsageMaker usages;
  private final Map<String, List<Usage>> uses = new LinkedHashMap<>();
  private final Map<String, List<Job>> tools = new LinkedHashMap<>();
  private final List<Rope> withoutPage = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final List<String> missing = new ArrayList<>();

  Needs(Library library, Fitting fitting, Workings workings) {
    this.library = library;
    this.fitting = fitting;
    this.usages = new UsageMaker(workings);
  }

  void add(BoughtFor wanted) {
    if (wanted instanceof Job job) {
      add(job);
    } else if (wanted instanceof NewRope rope) {
      add(rope);
    }
  }

  /** A rope is bought as the page of its kind says; one that no page describes by its metres. */
  private void add(NewRope rope) {
    Optional<Page<Material>> page = page(rope);
    if (page.isPresent()) {
      uses.computeIfAbsent(page.get().id(), id -> new ArrayList<>()).add(UsageMaker.of(rope));
    } else if (rope.rope().isReckoned()) {
      withoutPage.add(rope.rope());
    } else {
      leftOut.add(new LeftOut(rope, String.join("; ", rope.rope().open())));
    }
  }

  private static Optional<Page<Material>> page(NewRope rope) {
    return rope.rope().material().filter(page -> page.details().isCutInPieces());
  }

  private void add(Job job) {
    Fit fit = fitting.judge(job.work().head().fits());
    if (!fit.fits()) {
      leftOut.add(new LeftOut(job, "not for " + fitting.boat().name() + ": " + fit.reason()));
    } else if (job.work().details().skill() == Skill.LICENSED) {
      leftOut.add(new LeftOut(job, "for the licensed, who bring what it takes"));
    } else {
      job.work().details().materials().forEach(use -> add(job, use));
      job.work().details().tools().forEach(tool -> add(job, tool));
    }
  }

  private void add(Job job, MaterialUse use) {
    if (!fitting.fits(use.fits())) {
      return;
    }
    Optional<Page<Material>> page = library.material(use.use());
    if (page.isEmpty()) {
      missing.add(use.use());
      return;
    }
    uses.computeIfAbsent(use.use(), id -> new ArrayList<>()).add(usages.of(job, use, page.get()));
  }

  private void add(Job job, ToolUse tool) {
    if (fitting.fits(tool.fits())) {
      List<Job> jobs = tools.computeIfAbsent(tool.use(), id -> new ArrayList<>());
      if (!jobs.contains(job)) {
        jobs.add(job);
      }
    }
  }

  Map<String, List<Usage>> uses() {
    return uses;
  }

  /** Tools whose page can be read. */
  List<ToolLine> tools() {
    List<ToolLine> lines = new ArrayList<>();
    tools.forEach(
        (id, jobs) -> library.material(id).ifPresent(page -> lines.add(new ToolLine(page, jobs))));
    return lines;
  }

  /** Ropes whose kind no page describes. */
  List<Rope> withoutPage() {
    return withoutPage;
  }

  List<LeftOut> leftOut() {
    return leftOut;
  }

  /** Ids of materials whose page is missing or cannot be read, each once. */
  List<String> missing() {
    return missing.stream().distinct().toList();
  }
}
