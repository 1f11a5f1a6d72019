package limberboard.print.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Problem;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.PageCutter;
import limberboard.print.cut.PageParts;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListPart;
import limberboard.upkeep.list.WorkList;
import limberboard.words.AccessWords;
import limberboard.words.DayWords;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;

/**
 * A fitting-out or laying-up list as a sheet to be ticked off: the cautions by name at the lines
 * they are for, the boat's facts, the parts with room for notes, and at the end each caution once.
 * Steps are never printed, so that nobody takes a line for the procedure. Immutable; any thread.
 */
public final class WorkListSheet {
  private static final int MANY = 12;
  private static final int NOTE_LINES = 2;
  private static final int NOTE_LINES_ON_PAPER = 1;
  private static final String IN_FULL =
      "Work from the page of each procedure: it has the steps, the whole of each caution, and who"
          + " must be asked. Local codes, licensed trades and the emergency services come first.";

  private final Library library;

  /** Sheets whose cautions are looked up in this library. */
  public WorkListSheet(Library library) {
    this.library = library;
  }

  /** The list with every caution in full at its end, for a terminal. */
  public CutPage of(WorkList list) {
    return sheet(list, Cautions.allAtEnd(cautions(list), at(list)), false);
  }

  /**
   * The list for paper: of each caution two lines at the end, so that the sheet stays one that is
   * carried about; the whole text stands on the page of each procedure, and the sheet says so. The
   * reason for a line is given only where it is overdue.
   */
  public CutPage onPaper(WorkList list) {
    return sheet(list, Cautions.atEnd(cautions(list), at(list), IN_FULL), true);
  }

  /** The list for a window: cautions as on paper, so that one comes to the work, all reasons. */
  public CutPage inWindow(WorkList list) {
    return sheet(list, Cautions.atEnd(cautions(list), at(list), IN_FULL), false);
  }

  private CutPage sheet(WorkList list, Optional<Part> cautions, boolean onPaper) {
    List<Part> parts = new ArrayList<>();
    parts.add(facts(list));
    problems(list).ifPresent(parts::add);
    list.parts().forEach(part -> parts.add(part(part, list, onPaper)));
    if (list.parts().isEmpty()) {
      parts.add(PageParts.notice("", "There is nothing on this list."));
    }
    cautions.ifPresent(parts::add);
    Boat boat = list.fitting().boat();
    return new CutPage(
        list.kind().word(),
        Kind.TOPIC,
        CutPage.LIST,
        ListWords.title(list.kind()) + " " + boat.name(),
        ListWords.sum((int) list.lines().count(), list.workMinutes(), list.accessMinutes()),
        PageCutter.cutFor(boat) + ", on " + DayWords.of(list.fitting().on()),
        parts);
  }

  /** The cautions of all the work, each once. */
  private List<WorkCaution> cautions(WorkList list) {
    return WorkCautions.joined(list.lines().map(line -> cautions(line, list)).toList());
  }

  private List<WorkCaution> cautions(ListLine line, WorkList list) {
    return WorkCautions.on(library, list.fitting()).of(line.work());
  }

  /** The numbers of the lines that a caution is for; so many are not counted up. */
  private Function<WorkCaution, String> at(WorkList list) {
    Map<String, List<String>> numbers = new HashMap<>();
    list.lines()
        .forEach(
            line ->
                cautions(line, list)
                    .forEach(
                        caution ->
                            numbers
                                .computeIfAbsent(caution.id(), id -> new ArrayList<>())
                                .add(Integer.toString(line.number()))));
    return caution -> {
      List<String> here = numbers.get(caution.id());
      return here.size() > MANY ? "at many lines" : "at " + String.join(", ", here);
    };
  }

  private static Part facts(WorkList list) {
    Boat boat = list.fitting().boat();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Use", use(boat)));
    facts.add(Block.Fact.of("Fitted", fitted(boat)));
    return new Part(Part.Role.FACTS, "", List.of(new Block.Facts(facts)));
  }

  private static String use(Boat boat) {
    String season =
        boat.season()
            .map(
                afloat ->
                    ", afloat from "
                        + TimeWords.day(afloat.from())
                        + " to "
                        + TimeWords.day(afloat.to()))
            .orElse("");
    return boat.use().spoken() + ", in " + boat.water().spoken() + " water" + season;
  }

  private static String fitted(Boat boat) {
    return boat.model().details().equipment().stream()
        .map(equipment -> choice(equipment, boat))
        .flatMap(Optional::stream)
        .map(Sentences::lowered)
        .collect(Collectors.joining(", "));
  }

  private static Optional<String> choice(Equipment equipment, Boat boat) {
    return equipment.choices().stream()
        .filter(choice -> choice.id().equals(boat.equipment().get(equipment.id())))
        .filter(choice -> !choice.title().startsWith("No "))
        .map(choice -> choice.title())
        .findFirst();
  }

  private static Optional<Part> problems(WorkList list) {
    List<List<Inline>> lines =
        list.problems().stream().map(Problem::toString).map(Inline::text).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.NOTICE,
                "What the pages contradict each other in",
                List.of(Block.Items.dotted(lines))));
  }

  private Part part(ListPart part, WorkList list, boolean onPaper) {
    List<Block.Tick> ticks =
        onPaper
            ? part.lines().stream().map(line -> tick(line, list, true)).toList()
            : withPassing(part, list);
    return new Part(
        Part.Role.WORK,
        ListWords.title(part.phase()),
        List.of(
            Block.Paragraph.of(ListWords.sum(part)),
            new Block.TickList(ticks, onPaper ? NOTE_LINES_ON_PAPER : NOTE_LINES, onPaper)));
  }

  private List<Block.Tick> withPassing(ListPart part, WorkList list) {
    List<Block.Tick> ticks = new ArrayList<>();
    String closing = "";
    for (ListLine line : part.lines()) {
      passing(closing, ListWords.open(line)).ifPresent(ticks::add);
      ticks.add(tick(line, list, false));
      closing = ListWords.close(line);
    }
    passing(closing, "").ifPresent(ticks::add);
    return ticks;
  }

  /** What is put back, and then opened, between two lines; empty when nothing is. */
  private static Optional<Block.Tick> passing(String closing, String opening) {
    String gap = closing.isEmpty() || opening.isEmpty() ? "" : ". ";
    String words = closing + gap + opening;
    return words.isEmpty() ? Optional.empty() : Optional.of(Block.Tick.passing(words));
  }

  private Block.Tick tick(ListLine line, WorkList list, boolean onPaper) {
    Page<Procedure> page = line.work();
    List<Block.Fact> beside = new ArrayList<>();
    Cautions.beside(cautions(line, list)).ifPresent(beside::add);
    if (onPaper && !line.open().isEmpty()) {
      beside.add(Block.Fact.of("First open", AccessWords.opened(line.open())));
    }
    page.details()
        .lookFor()
        .ifPresent(
            look -> {
              beside.add(Block.Fact.of("Good", look.good()));
              beside.add(Block.Fact.of("Bad", look.bad()));
            });
    LocalDate on = list.fitting().on();
    boolean overdue = line.task().due().filter(day -> day.isBefore(on)).isPresent();
    if (overdue || !onPaper) {
      beside.add(Block.Fact.of("Why", line.task().why().said(DayWords::of)));
    }
    if (onPaper && !line.close().isEmpty()) {
      beside.add(Block.Fact.of("Then put back", ListWords.closed(line)));
    }
    return new Block.Tick(
        Integer.toString(line.number()),
        List.of(new Inline.PageLink(page.id(), Inline.text(page.title()))),
        onPaper
            ? List.of(String.join(" · ", ListWords.facts(line, on)).replace("ue ", "ue\u00a0"))
            : ListWords.facts(line, on),
        beside);
  }
}
