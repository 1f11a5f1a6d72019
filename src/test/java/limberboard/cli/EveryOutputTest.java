package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.calendar.PlanCalendar;
import limberboard.calendar.UpkeepCalendar;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Caution;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Check;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.print.cut.PageCutter;
import limberboard.print.drawing.TimeLineDrawing;
import limberboard.print.drawing.TreeCard;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.drawing.TreeText;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.sheet.AppointmentsCsv;
import limberboard.print.sheet.AppointmentsSheet;
import limberboard.print.sheet.DueSheet;
import limberboard.print.sheet.PlanCsv;
import limberboard.print.sheet.PlanSheet;
import limberboard.print.sheet.ReplyText;
import limberboard.print.sheet.RiggingCsv;
import limberboard.print.sheet.RiggingSheet;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.print.sheet.TraceSheet;
import limberboard.print.sheet.WorkListCsv;
import limberboard.print.sheet.WorkListSheet;
import limberboard.print.text.PlainText;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.trace.CautionsRead;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import limberboard.upkeep.Appointed;
import limberboard.upkeep.Appointments;
import limberboard.upkeep.Due;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkList;
import limberboard.upkeep.list.WorkListMaker;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.ShoppingList;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every output of work on a boat names every caution of that work: on the demo, and on small
 * libraries in which cautions, materials, tools and the boats they are for are dealt out at random.
 */
class EveryOutputTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);
  private static final ObjectMapper JSON = new ObjectMapper().registerModule(new Jdk8Module());
  private static final double RAREST = 0.2;

  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Stream<Fitting> boats() {
    Boat known = workspace.boat("whimbrel").orElseThrow();
    Boat bought = known.with(List.of()).bought(ON.minusMonths(5));
    return Stream.concat(workspace.boats().stream(), Stream.of(bought))
        .map(boat -> new Fitting(boat, ON));
  }

  /** That an output names cautions: each by its title. */
  private static void names(
      Library library, String output, Collection<String> wanted, String what) {
    String flat = flat(output);
    assertThat(wanted)
        .as(what)
        .allSatisfy(id -> assertThat(flat).as(what).contains(flat(title(library, id))));
  }

  private static String title(Library library, String id) {
    return library.caution(id).map(Page::title).orElse(id.replace('-', ' '));
  }

  private static String flat(String text) {
    return text.replaceAll("[\\s\\u00a0]+", " ");
  }

  private static String text(CutPage page) {
    return new PlainText().render(page, 1000);
  }

  private static Set<String> ids(JsonNode cautions) {
    Set<String> ids = new TreeSet<>();
    cautions.forEach(each -> ids.add(each.isTextual() ? each.asText() : each.get("id").asText()));
    return ids;
  }

  private static List<CSVRecord> rows(String csv) {
    try {
      return CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(new StringReader(csv))
          .getRecords();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Set<String> ids(CSVRecord row) {
    return new TreeSet<>(List.of(row.get("cautions").split("[ ;]")));
  }

  private static void pages(Library library, Fitting boat) {
    WantedCautions wanted = new WantedCautions(library, boat);
    PageCutter cutter = new PageCutter(library);
    for (Page<Procedure> page : works(library, boat)) {
      CutPage cut = cutter.cut(page, Optional.of(boat));
      names(library, text(cut), wanted.of(page), page.id());
      assertThat(cut.parts().get(0).blocks().isEmpty()).isFalse();
      shopping(library, boat, page);
    }
    for (Page<Symptom> page : symptoms(library, boat)) {
      Set<String> all = wanted.named(page.details().first());
      page.details().checks().stream()
          .filter(check -> boat.fits(check.fits()))
          .forEach(check -> all.addAll(wanted.of(check)));
      names(library, text(cutter.cut(page, Optional.of(boat))), all, page.id());
    }
  }

  private static List<Page<Procedure>> works(Library library, Fitting boat) {
    return library.all(Procedure.class).stream()
        .filter(page -> boat.fits(page.head().fits()))
        .toList();
  }

  private static List<Page<Symptom>> symptoms(Library library, Fitting boat) {
    return library.all(Symptom.class).stream()
        .filter(page -> boat.fits(page.head().fits()))
        .toList();
  }

  private static void shopping(Library library, Fitting boat, Page<Procedure> page) {
    Set<String> wanted = new WantedCautions(library, boat).of(page);
    ShoppingList list =
        ShoppingList.of(List.of(new Job(page, 1, ON)), boat, workspace.stock(boat.boat()), library);
    String what = "shopping for " + page.id();
    names(library, text(new ShoppingSheet(library).of(list)), wanted, what);
    names(library, text(new ShoppingSheet(library).onPaper(list)), wanted, what);
    JsonNode json = JSON.valueToTree(ShoppingView.of(list));
    assertThat(ids(json.get("cautions"))).as(what).containsAll(wanted);
    assertThat(ids(json.get("work").get(0).get("cautions"))).as(what).containsAll(wanted);
    for (CSVRecord row : rows(new ShoppingCsv().render(list))) {
      Set<String> here =
          row.get("row").equals("total")
              ? new WantedCautions(library, boat).ofThing(row.get("material"))
              : wanted;
      if (!here.isEmpty()) {
        assertThat(ids(row)).as(what).containsAll(here);
      }
    }
  }

  private static void upkeep(Library library, Fitting boat) {
    WantedCautions wanted = new WantedCautions(library, boat);
    Upkeep upkeep = Upkeep.of(library, boat);
    String text = printed(out -> new DueText(out).print(upkeep, List.of(), true));
    String sheet = text(DueSheet.of(upkeep, List.of(), 20));
    TimeLine seasons = TimeLine.of(upkeep, 20);
    String drawing = TimeLineDrawing.whole(seasons).replaceAll("</text>\\s*<text[^>]*>", " ");
    Set<String> drawn = seasons.rows().stream().map(TimeLine.Row::page).collect(Collectors.toSet());
    Map<String, String> events =
        Stream.of(new UpkeepCalendar(1).text(upkeep).replace("\r\n ", "").split("BEGIN:VEVENT"))
            .filter(event -> event.contains("SUMMARY:"))
            .collect(
                Collectors.toMap(
                    event -> event.split("SUMMARY:", 2)[1].split("\r\n", 2)[0],
                    event -> event.replace("\\n", " ").replace("\\", ""),
                    (one, other) -> one + other));
    JsonNode json = JSON.valueToTree(DueView.of(upkeep, List.of())).get("due");
    List<CSVRecord> rows = rows(DueCsv.of(List.of(upkeep)));
    for (int i = 0; i < upkeep.all().size(); i++) {
      Due due = upkeep.all().get(i);
      Set<String> here = wanted.of(due.work());
      names(library, text, here, "due " + due.id());
      names(library, sheet, here, "due sheet " + due.id());
      if (drawn.contains(due.work().id())) {
        names(library, drawing, here, "time line, " + due.id());
      }
      assertThat(ids(json.get(i).get("cautions"))).as(due.id()).containsAll(here);
      if (!here.isEmpty()) {
        assertThat(ids(rows.get(i))).as(due.id()).containsAll(here);
      }
      String title = boat.boat().name() + ": " + due.title();
      events.entrySet().stream()
          .filter(event -> event.getKey().replace("\\", "").equals(title))
          .forEach(event -> names(library, event.getValue(), here, "calendar, " + due.id()));
    }
    assertThat(events).isNotEmpty();
    assertThat(drawn).isNotEmpty();
    for (ListKind kind : ListKind.values()) {
      list(library, upkeep, kind);
    }
    plan(library, upkeep);
    appointments(library, upkeep);
  }

  /** What is to be booked: all of it, since part of it is the owner's, and he stands beside it. */
  private static void appointments(Library library, Upkeep upkeep) {
    WantedCautions wanted = new WantedCautions(library, upkeep.fitting());
    Appointments all = upkeep.appointments(true);
    String text = printed(out -> new AppointmentsText(out).print(upkeep, all));
    List<String> sheets =
        List.of(
            text(AppointmentsSheet.of(upkeep, all)), text(AppointmentsSheet.onPaper(upkeep, all)));
    String bookings = new UpkeepCalendar(1).bookings(upkeep).replace("\r\n ", "");
    List<JsonNode> lines = new ArrayList<>();
    JSON.valueToTree(AppointmentsView.of(upkeep, all))
        .get("calls")
        .forEach(call -> call.get("appointments").forEach(lines::add));
    List<CSVRecord> rows = rows(AppointmentsCsv.of(upkeep, all));
    for (int i = 0; i < all.all().size(); i++) {
      Appointed each = all.all().get(i);
      Set<String> here = wanted.of(each.due().work());
      String what = "appointment " + each.due().id();
      String own = text.split(Pattern.quote("  " + each.due().title() + ", "), 2)[1];
      names(library, own.split("\n  (?! )|\n\n", 2)[0], here, what);
      sheets.forEach(sheet -> names(library, sheet, here, what));
      names(library, tick(AppointmentsSheet.onPaper(upkeep, all), i), here, what + ", beside it");
      assertThat(ids(lines.get(i).get("cautions"))).as(what).containsAll(here);
      if (!here.isEmpty()) {
        assertThat(ids(rows.get(i))).as(what).containsAll(here);
      }
      if (each.ownPart().isPresent()) {
        upkeep
            .cautions(each.due().work())
            .forEach(one -> assertThat(dense(text)).as(what).contains(dense(one.rule())));
      }
      Stream.of(bookings.split("BEGIN:VEVENT"))
          .filter(event -> event.replace("\\", "").contains("for “" + each.due().title() + "”"))
          .forEach(
              event ->
                  names(
                      library,
                      event.replace("\\n", " ").replace("\\", ""),
                      here,
                      what + ", calendar"));
    }
  }

  private static void list(Library library, Upkeep upkeep, ListKind kind) {
    WantedCautions wanted = new WantedCautions(library, upkeep.fitting());
    ListWork work = new ListWork(upkeep);
    WorkList list =
        new WorkListMaker(upkeep.fitting()).list(kind, work.everything(kind, work.season(kind)));
    WorkListSheet sheets = new WorkListSheet(library);
    List<String> sheetsText =
        Stream.of(sheets.of(list), sheets.onPaper(list), sheets.inWindow(list))
            .map(EveryOutputTest::text)
            .toList();
    JsonNode json = JSON.valueToTree(ListView.of(list, library));
    List<JsonNode> lines = new ArrayList<>();
    json.get("parts").forEach(part -> part.get("lines").forEach(lines::add));
    List<CSVRecord> rows = rows(new WorkListCsv(library).render(list));
    List<ListLine> all = list.lines().toList();
    for (int i = 0; i < all.size(); i++) {
      Set<String> here = wanted.of(all.get(i).work());
      String what = kind.word() + ", " + all.get(i).work().id();
      sheetsText.forEach(text -> names(library, text, here, what));
      assertThat(ids(json.get("cautions"))).as(what).containsAll(here);
      assertThat(ids(lines.get(i).get("cautions"))).as(what).containsAll(here);
      if (!here.isEmpty()) {
        assertThat(ids(rows.get(i))).as(what).containsAll(here);
      }
    }
  }

  private static void plan(Library library, Upkeep upkeep) {
    WantedCautions wanted = new WantedCautions(library, upkeep.fitting());
    PlanOrder order = new PlanOrder(OptionalInt.of(1200), ON.plusDays(40), List.of(), false);
    WorkPlan plan = ((PlanAnswer.Made) new Planning(upkeep).answer(order)).plan();
    List<String> outputs =
        List.of(
            text(new PlanSheet(library).of(plan)),
            text(new PlanSheet(library).onPaper(plan)),
            new PlanCalendar(library)
                .text(plan)
                .replace("\r\n ", "")
                .replace("\\n", " ")
                .replace("\\", ""));
    JsonNode json = JSON.valueToTree(PlanView.of(plan, library));
    List<JsonNode> lines = new ArrayList<>();
    json.get("days").forEach(day -> day.get("lines").forEach(lines::add));
    List<CSVRecord> rows = rows(new PlanCsv(library).render(plan));
    List<PlanLine> all = plan.lines().toList();
    assertThat(all).isNotEmpty();
    for (int i = 0; i < all.size(); i++) {
      Set<String> here = new TreeSet<>();
      all.get(i).work().pages().forEach(page -> here.addAll(wanted.of(page)));
      String what = "plan, " + all.get(i).line().work().id();
      outputs.forEach(output -> names(library, output, here, what));
      names(library, tick(new PlanSheet(library).onPaper(plan), i), here, what + " at its line");
      assertThat(ids(json.get("cautions"))).as(what).containsAll(here);
      assertThat(ids(lines.get(i).get("cautions"))).as(what).containsAll(here);
      if (!here.isEmpty()) {
        assertThat(ids(rows.get(i))).as(what).containsAll(here);
      }
    }
  }

  /** What stands at a line to be ticked off, by its place among all of them. */
  private static String tick(CutPage sheet, int at) {
    Block.Tick tick =
        sheet.parts().stream()
            .flatMap(part -> part.blocks().stream())
            .filter(Block.TickList.class::isInstance)
            .flatMap(block -> ((Block.TickList) block).ticks().stream())
            .skip(at)
            .findFirst()
            .orElseThrow();
    return tick.beside().stream()
        .flatMap(fact -> fact.value().stream())
        .map(inline -> ((Inline.Text) inline).text())
        .collect(Collectors.joining(" "));
  }

  private static void rigging(Library library, Fitting boat) {
    RunningRigging rigging = RunningRigging.of(library, boat);
    WantedCautions wanted = new WantedCautions(library, boat);
    String sheet = text(new RiggingSheet(library).of(rigging));
    JsonNode json = JSON.valueToTree(RiggingView.of(rigging));
    List<CSVRecord> rows = rows(new RiggingCsv().render(rigging));
    for (int i = 0; i < rigging.ropes().size(); i++) {
      Rope rope = rigging.ropes().get(i);
      Set<String> here = rope.material().map(page -> wanted.ofThing(page.id())).orElse(Set.of());
      names(library, sheet, here, rope.id());
      assertThat(ids(json.get("cautions"))).as(rope.id()).containsAll(here);
      assertThat(ids(json.get("ropes").get(i).get("cautions"))).as(rope.id()).containsAll(here);
      if (!here.isEmpty()) {
        assertThat(ids(rows.get(i))).as(rope.id()).containsAll(here);
      }
    }
  }

  /** Every step that a trace can come to, shown as the next one. */
  private static int steps(Library library, Fitting boat) {
    int steps = 0;
    for (Page<Symptom> page : symptoms(library, boat)) {
      Fault fault = Fault.of(page, boat, library, List.of());
      Trace trace = Trace.begin(fault);
      for (FaultCheck check : fault.checks()) {
        step(library, trace, new NextStep.DoCheck(check, 1, List.of(), ""));
        step(library, trace, new NextStep.MakeSafe(check, ""));
        steps++;
      }
      for (FaultCause cause : fault.causes()) {
        step(library, trace, new NextStep.DoMend(cause, 1, List.of(), ""));
        steps++;
      }
    }
    return steps;
  }

  private static void step(Library library, Trace trace, NextStep step) {
    Set<String> own = wanted(library, trace.fault().fitting(), step);
    Set<String> all = new TreeSet<>(own);
    all.addAll(
        new WantedCautions(library, trace.fault().fitting())
            .named(trace.fault().page().details().first()));
    String what = trace.fault().page().id() + ", " + step.kind() + " " + step.id();
    names(library, text(new TraceSheet(library).of(trace, step)), all, what);
    names(library, printed(out -> new TraceText(out).state(trace, step)), all, what);
    names(library, folded(trace, step), all, what + ", all read");
    for (String output :
        List.of(
            text(new TraceSheet(library).of(trace, step)),
            printed(out -> new TraceText(out).state(trace, step)),
            new ReplyText(library, trace, step).plain())) {
      step.cautions().stream()
          .filter(caution -> !standsWhole(trace, caution))
          .forEach(
              caution ->
                  assertThat(dense(output))
                      .as(what + ": the rule of " + caution.id())
                      .contains(dense(caution.rule())));
    }
    assertThat(ids(JSON.valueToTree(TraceView.StepView.of(step)).get("cautions")))
        .as(what)
        .containsAll(own);
    assertThat(step.cautions().stream().map(caution -> caution.id())).as(what).containsAll(own);
  }

  /** Whether a caution that has no rule for this work stands in full, as an emergency. */
  private static boolean standsWhole(Trace trace, WorkCaution caution) {
    return caution.rule().equals(caution.page().details().shortRule())
        && trace.fault().first().stream()
            .anyMatch(first -> first.id().equals(caution.id()) && first.emergency());
  }

  private static String dense(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }

  /** What the terminal prints of the cautions of a step when each has been read. */
  private static String folded(Trace trace, NextStep step) {
    List<WorkCaution> cautions =
        WorkCautions.joined(List.of(trace.fault().first(), step.cautions()));
    CautionsRead read = CautionsRead.NONE.with(cautions);
    for (WorkCaution caution : cautions) {
      if (caution.question().isPresent()) {
        read = read.answered(caution, false);
      }
    }
    CautionsRead all = read;
    return printed(out -> new CautionsText(out).print(cautions, all));
  }

  private static Set<String> wanted(Library library, Fitting boat, NextStep step) {
    WantedCautions wanted = new WantedCautions(library, boat);
    if (step instanceof NextStep.DoCheck check) {
      return wanted.of(check.check().check());
    } else if (step instanceof NextStep.MakeSafe safe) {
      return wanted.of(safe.check().check());
    }
    return library.procedure(step.id()).map(wanted::of).orElse(Set.of());
  }

  private static void trees(Library library, Fitting boat, Page<Symptom> page) {
    Trace trace = Trace.begin(Fault.of(page, boat, library, List.of()));
    DiagnosticTree tree = DiagnosticTree.of(trace, RAREST);
    Set<String> first = new WantedCautions(library, boat).named(page.details().first());
    card(library, tree, first);
    for (int levels = 1; levels < tree.depth(); levels++) {
      levels(library, TreeCut.levels(tree, levels), first);
    }
    JsonNode json = JSON.valueToTree(TreeView.of(tree));
    assertThat(ids(JSON.valueToTree(TraceView.of(trace, List.of())).get("cautions")))
        .containsAll(first);
    List<String> outputs =
        List.of(
            text(new TreeSheet().of(tree)),
            new TreeText().render(tree, 1000),
            new TreeDrawing().whole(tree).replaceAll("<[^>]*>", " "));
    for (int i = 0; i < tree.forks().size(); i++) {
      Set<String> own = wanted(library, boat, tree.forks().get(i).step());
      Set<String> all = new TreeSet<>(own);
      all.addAll(first);
      String what = "tree of " + page.id() + ", fork " + (i + 1);
      outputs.forEach(output -> names(library, output, all, what));
      assertThat(ids(json.get("cautions"))).as(what).containsAll(all);
      assertThat(ids(json.get("forks").get(i).get("cautions"))).as(what).containsAll(own);
    }
  }

  /** A tree cut down: every caution of a step that it shows, in every output. */
  private static void levels(Library library, TreeCut cut, Set<String> first) {
    List<String> outputs =
        List.of(
            text(new TreeSheet().of(cut)),
            new TreeText().render(cut, 1000),
            new TreeDrawing().of(cut).replaceAll("<[^>]*>", " "));
    JsonNode json = JSON.valueToTree(DepthView.of(cut));
    List<DiagnosticTree.Fork> forks = cut.forks();
    for (int i = 0; i < forks.size(); i++) {
      Set<String> own = wanted(library, cut.tree().from().fault().fitting(), forks.get(i).step());
      Set<String> all = new TreeSet<>(own);
      all.addAll(first);
      String what = "cut tree, fork " + forks.get(i).number();
      outputs.forEach(output -> names(library, output, all, what));
      assertThat(ids(json.get("cautions"))).as(what).containsAll(all);
      assertThat(ids(json.get("forks").get(i).get("cautions"))).as(what).containsAll(own);
    }
  }

  private static void card(Library library, DiagnosticTree tree, Set<String> first) {
    TreeCard cards = new TreeCard();
    TreeCut cut = cards.cut(tree);
    assertThat(cards.fits(cut)).isTrue();
    List<String> outputs =
        List.of(cards.text(cut, 1000), cards.drawing(cut).replaceAll("<[^>]*>", " "));
    JsonNode json = JSON.valueToTree(CardView.of(cut));
    List<DiagnosticTree.Fork> forks = cut.forks();
    for (int i = 0; i < forks.size(); i++) {
      Set<String> own = wanted(library, tree.from().fault().fitting(), forks.get(i).step());
      Set<String> all = new TreeSet<>(own);
      all.addAll(first);
      String what = "card, fork " + forks.get(i).number();
      outputs.forEach(output -> names(library, output, all, what));
      assertThat(ids(json.get("cautions"))).as(what).containsAll(all);
      assertThat(ids(json.get("forks").get(i).get("cautions"))).as(what).containsAll(own);
    }
  }

  private static String printed(Consumer<PrintWriter> print) {
    StringWriter written = new StringWriter();
    PrintWriter out = new PrintWriter(written);
    print.accept(out);
    out.flush();
    return written.toString();
  }

  @Test
  void pagesAndShoppingOfTheDemo() {
    boats().forEach(boat -> pages(workspace.library(), boat));
  }

  @Test
  void upkeepListsAndRopesOfTheDemo() {
    boats()
        .forEach(
            boat -> {
              upkeep(workspace.library(), boat);
              rigging(workspace.library(), boat);
            });
  }

  @Test
  void stepsOfTheDemosTraces() {
    assertThat(boats().mapToInt(boat -> steps(workspace.library(), boat)).sum()).isGreaterThan(700);
  }

  @Test
  void treesOfTheDemo() {
    Fitting boat = new Fitting(workspace.boats().get(0), ON);
    symptoms(workspace.library(), boat).forEach(page -> trees(workspace.library(), boat, page));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void smallLibrariesDealtOutAtRandom(long seed) {
    Library dealt = new Dealt(new Random(seed)).library();
    Boat boat = workspace.boats().get((int) (seed % workspace.boats().size()));
    Fitting fitting = new Fitting(boat, ON);
    pages(dealt, fitting);
    upkeep(dealt, fitting);
    rigging(dealt, fitting);
    assertThat(steps(dealt, fitting)).isPositive();
    trees(dealt, fitting, symptoms(dealt, fitting).get(0));
  }

  /** The demo's pages with other cautions, materials and tools, some of them not there at all. */
  private record Dealt(Random random) {
    private static final List<String> NOBODYS = List.of("no-such-caution", "no-such-thing");

    Library library() {
      Library whole = workspace.library();
      List<Page<?>> pages = new ArrayList<>(whole.all(Caution.class));
      for (Page<?> page : whole.pages()) {
        if (page.details() instanceof Procedure work && random.nextInt(4) == 0) {
          pages.add(with(page, dealt(work)));
        } else if (page.details() instanceof Material material) {
          pages.add(with(page, dealt(material)));
        } else if (page.details() instanceof Symptom symptom) {
          pages.add(with(page, dealt(symptom)));
        } else if (!(page.details() instanceof Procedure || page.details() instanceof Caution)) {
          pages.add(page);
        }
      }
      return new Library(pages, Map.of(), List.of());
    }

    private static <D extends Details> Page<D> with(Page<?> page, D details) {
      return new Page<>(page.id(), page.path(), page.head(), details, page.body(), page.bodyLine());
    }

    private List<CautionUse> cautions() {
      return cautions(false);
    }

    /** Some with conditions: the boats they are for and, of materials, the least amount. */
    private List<CautionUse> cautions(boolean ofMaterial) {
      List<String> all =
          new ArrayList<>(workspace.library().all(Caution.class).stream().map(Page::id).toList());
      all.add(NOBODYS.get(0));
      return some(all, 3).stream()
          .map(id -> new CautionUse(id, "", fits(), List.of(), from(ofMaterial), ""))
          .toList();
    }

    private Optional<Amount.Fixed> from(boolean ofMaterial) {
      return ofMaterial && random.nextBoolean()
          ? Optional.of(new Amount.Fixed(KnownUnit.MILLILITRE.quantity(1 + random.nextInt(40))))
          : Optional.empty();
    }

    private <T> List<T> some(List<T> all, int most) {
      return random.ints(random.nextInt(most + 1), 0, all.size()).mapToObj(all::get).toList();
    }

    private Condition fits() {
      List<Condition> all =
          workspace.library().pages().stream().map(page -> page.head().fits()).distinct().toList();
      return random.nextBoolean() ? Condition.ALWAYS : all.get(random.nextInt(all.size()));
    }

    private List<ToolUse> tools() {
      List<String> ids =
          new ArrayList<>(
              workspace.library().all(Material.class).stream()
                  .filter(page -> page.details().isTool())
                  .map(Page::id)
                  .toList());
      ids.add(NOBODYS.get(1));
      return some(ids, 4).stream().map(id -> new ToolUse(id, fits())).toList();
    }

    private List<MaterialUse> materials() {
      List<String> ids =
          new ArrayList<>(
              workspace.library().all(Material.class).stream()
                  .filter(page -> !page.details().isTool())
                  .map(Page::id)
                  .toList());
      ids.add(NOBODYS.get(1));
      return some(ids, 4).stream()
          .map(id -> new MaterialUse(id, fits(), "", amount(id), null, null, null, null, null))
          .toList();
    }

    private Optional<Amount> amount(String material) {
      boolean counted =
          workspace
              .library()
              .material(material)
              .filter(page -> page.details().unit().equals(Optional.of(CountingUnit.ML)))
              .isPresent();
      return counted && random.nextInt(3) > 0
          ? Optional.of(new Amount.Fixed(KnownUnit.MILLILITRE.quantity(1 + random.nextInt(40))))
          : Optional.empty();
    }

    private Procedure dealt(Procedure work) {
      return new Procedure(
          work.work(),
          work.skill(),
          work.minutes(),
          work.minutesFor(),
          work.access(),
          tools(),
          materials(),
          cautions(),
          work.lookFor(),
          work.interval(),
          work.lookAgain(),
          work.resets(),
          work.before(),
          work.round(),
          work.appointment(),
          work.ownerParts(),
          work.workings());
    }

    private Material dealt(Material m) {
      return new Material(
          m.group(),
          m.unit(),
          m.packs(),
          m.shelfLife(),
          m.openedLife(),
          m.keepOff(),
          m.instead(),
          cautions(m.unit().equals(Optional.of(CountingUnit.ML))),
          m.workings(),
          m.mixing(),
          m.bought(),
          m.rope(),
          m.figures());
    }

    private Symptom dealt(Symptom symptom) {
      return new Symptom(
          cautions(),
          symptom.causes(),
          symptom.checks().stream().map(this::dealt).toList(),
          symptom.somethingElse());
    }

    private Check dealt(Check check) {
      return new Check(
          check.id(),
          check.ask(),
          check.how(),
          check.picture(),
          check.minutes(),
          check.access(),
          tools(),
          cautions(),
          check.fits(),
          check.skill(),
          check.answers(),
          check.finds(),
          check.saidAs(),
          check.cantTell(),
          check.comesFirst(),
          check.makeSafe(),
          check.safeWhen());
    }
  }
}
