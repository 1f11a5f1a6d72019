package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.plan.PlanDay;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.Undone;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.words.AccessWords;
import limberboard.words.DayWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/**
 * A plan as a sheet to be ticked off: what it is for and how good it is, what must not be done
 * before what stays undone is done, the days, what stays undone and why, and the cautions. Each
 * caution stands at its lines, in short at the first of them, and whole at the end. Steps are never
 * printed. Immutable; any thread.
 */
public final class PlanSheet {
  private static final String IN_FULL =
      "Work from the page of each procedure: it has the steps, and says who must be asked. Local"
          + " codes, licensed trades and the emergency services come first.";

  private static final int SUB = 3;

  private final Library library;

  /** Sheets whose cautions are looked up in this library. */
  public PlanSheet(Library library) {
    this.library = library;
  }

  /** The plan, for a window and a terminal. */
  public CutPage of(WorkPlan plan) {
    return sheet(plan, false);
  }

  /** The plan for paper, set close. */
  public CutPage onPaper(WorkPlan plan) {
    return sheet(plan, true);
  }

  private CutPage sheet(WorkPlan plan, boolean onPaper) {
    WorkCautions known = WorkCautions.on(library, plan.fitting());
    List<Part> parts = new ArrayList<>();
    parts.add(purpose(plan));
    parts.addAll(forbidding(plan));
    Set<String> said = new HashSet<>();
    plan.days().forEach(day -> parts.add(day(day, known, said, onPaper)));
    appointments(plan).ifPresent(parts::add);
    undone(plan).ifPresent(parts::add);
    problems(plan).ifPresent(parts::add);
    cautions(plan, known).ifPresent(parts::add);
    return new CutPage(
        "plan",
        Kind.TOPIC,
        "plan",
        PlanWords.title(plan),
        PlanWords.sum(plan),
        PageCutter.cutFor(plan.fitting().boat()) + ", on " + DayWords.of(plan.fitting().on()),
        parts);
  }

  private static Part purpose(WorkPlan plan) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.Paragraph.of(PlanWords.proof(plan.proof())));
    PlanWords.appointments(plan).map(Block.Paragraph::of).ifPresent(blocks::add);
    PlanWords.musts(plan).map(Block.Paragraph::of).ifPresent(blocks::add);
    PlanWords.notKnown(plan).map(Block.Paragraph::of).ifPresent(blocks::add);
    plan.wish().days().remarks().forEach(remark -> blocks.add(Block.Paragraph.of(remark)));
    return new Part(Part.Role.FACTS, "", blocks);
  }

  /** What stays undone although she must not be used before it is done, by what is forbidden. */
  private static List<Part> forbidding(WorkPlan plan) {
    Map<String, List<List<Inline>>> lines = new LinkedHashMap<>();
    for (Undone undone : plan.forbidding()) {
      List<Inline> line = new ArrayList<>();
      line.add(new Inline.PageLink(undone.work().work().id(), Inline.text(undone.work().title())));
      line.addAll(
          Inline.text(
              PlanWords.orKnown(undone.work())
                  + ": left undone it "
                  + undone.work().consequence().said()));
      lines
          .computeIfAbsent(PlanWords.forbidding(plan, undone), what -> new ArrayList<>())
          .add(line);
    }
    List<Part> parts = new ArrayList<>();
    lines.forEach(
        (what, those) ->
            parts.add(
                new Part(
                    Part.Role.NOTICE,
                    what + " before this is done",
                    List.of(Block.Items.dotted(those)))));
    return parts;
  }

  private static Part day(PlanDay day, WorkCautions known, Set<String> said, boolean onPaper) {
    List<Block.Tick> ticks =
        day.lines().stream()
            .map(line -> tick(line, line.work().cautions(known), said, onPaper))
            .toList();
    return new Part(
        Part.Role.WORK,
        PlanWords.day(day),
        ticks.isEmpty()
            ? List.of(Block.Paragraph.of(PlanWords.sum(day)))
            : List.of(
                Block.Paragraph.of(PlanWords.sum(day)), new Block.TickList(ticks, 0, onPaper)));
  }

  private static Block.Tick tick(
      PlanLine planned, List<WorkCaution> cautions, Set<String> said, boolean onPaper) {
    ListLine line = planned.line();
    List<Block.Fact> beside = new ArrayList<>();
    List<String> again = new ArrayList<>();
    for (WorkCaution each : cautions) {
      caution(each, said)
          .ifPresentOrElse(
              words -> beside.add(Block.Fact.of("Caution", words)), () -> again.add(each.title()));
    }
    if (!again.isEmpty()) {
      beside.add(Block.Fact.of("Caution as above", String.join("; ", again)));
    }
    if (!line.open().isEmpty()) {
      beside.add(Block.Fact.of("First open", AccessWords.opened(line.open())));
    }
    if (!line.close().isEmpty()) {
      beside.add(Block.Fact.of("Then put back", ListWords.closed(line)));
    }
    return new Block.Tick(
        Integer.toString(line.number()),
        List.of(new Inline.PageLink(line.work().id(), Inline.text(planned.work().title()))),
        onPaper
            ? List.of(
                PlanWords.facts(planned).stream()
                    .map(Sentences::lowered)
                    .collect(Collectors.joining(" · ")))
            : PlanWords.facts(planned),
        beside);
  }

  /**
   * A caution in short where it is said for the first time, with its rule where that is new; empty
   * when all has been said.
   */
  private static Optional<String> caution(WorkCaution caution, Set<String> said) {
    boolean first = said.add(caution.id());
    boolean newRule = said.add(caution.id() + ": " + caution.rule());
    if (first) {
      return Optional.of(caution.title() + ": " + caution.danger() + " " + caution.rule());
    }
    return newRule ? Optional.of(caution.title() + ": " + caution.rule()) : Optional.empty();
  }

  /** What others come for, with the last day to book it. */
  private static Optional<Part> appointments(WorkPlan plan) {
    List<List<Inline>> lines = new ArrayList<>();
    for (PlanDay day : plan.days()) {
      day.lines().stream()
          .flatMap(line -> PlanWords.appointment(line, day, plan).stream())
          .forEach(words -> lines.add(Inline.text(words)));
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(Part.Role.TABLES, "Appointments to book", List.of(Block.Items.dotted(lines))));
  }

  private static Optional<Part> undone(WorkPlan plan) {
    Map<String, List<List<Inline>>> byMeaning = new LinkedHashMap<>();
    for (Undone undone : plan.undone()) {
      byMeaning
          .computeIfAbsent(PlanWords.need(undone.work()), need -> new ArrayList<>())
          .add(line(undone));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.Paragraph.of(PlanWords.UNDONE));
    byMeaning.forEach(
        (need, lines) -> {
          blocks.add(new Block.Heading(SUB, Inline.text(Sentences.capital(need))));
          blocks.add(Block.Items.dotted(lines));
        });
    return plan.undone().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(Part.Role.DUE, "What stays undone (" + plan.undone().size() + ")", blocks));
  }

  private static List<Inline> line(Undone undone) {
    String why = undone.reason() == Undone.Reason.NO_TIME ? "" : "; " + PlanWords.reason(undone);
    List<Inline> line = new ArrayList<>();
    line.add(new Inline.PageLink(undone.work().work().id(), Inline.text(undone.work().title())));
    line.addAll(
        Inline.text(
            ", "
                + Minutes.words(undone.work().minutes())
                + (undone.work().isNotKnown()
                    ? ", not known when last done"
                    : undone.work().lastDay().map(day -> ", due " + DayWords.of(day)).orElse(""))
                + why));
    return line;
  }

  private static Optional<Part> problems(WorkPlan plan) {
    List<List<Inline>> lines =
        plan.problems().stream().map(Problem::toString).map(Inline::text).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.LEFT_OUT,
                "What the pages contradict each other in",
                List.of(Block.Items.dotted(lines))));
  }

  /** Each caution once and whole, with the numbers of the lines it belongs to. */
  private static Optional<Part> cautions(WorkPlan plan, WorkCautions known) {
    Map<String, WorkCaution> all = new LinkedHashMap<>();
    Map<String, List<String>> numbers = new LinkedHashMap<>();
    plan.lines()
        .forEach(
            line -> {
              for (WorkCaution caution : line.work().cautions(known)) {
                all.putIfAbsent(caution.id(), caution);
                numbers
                    .computeIfAbsent(caution.id(), id -> new ArrayList<>())
                    .add(Integer.toString(line.line().number()));
              }
            });
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Notice(Inline.text(IN_FULL)));
    all.forEach(
        (id, caution) ->
            blocks.add(
                Cautions.box(caution.carriedBy("at " + String.join(", ", numbers.get(id))))));
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.CAUTIONS, "Cautions", blocks));
  }
}
