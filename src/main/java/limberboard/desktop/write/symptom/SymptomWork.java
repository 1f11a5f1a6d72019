package limberboard.desktop.write.symptom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Latest;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;
import limberboard.trace.Fault;
import limberboard.trace.review.PageReview;
import limberboard.trace.review.Remark;
import limberboard.trace.review.TriedCause;
import limberboard.writing.PageText;
import limberboard.writing.symptom.DraftSymptom;
import limberboard.writing.symptom.SymptomRead;
import limberboard.writing.symptom.SymptomTable;
import limberboard.writing.typing.MarkedProblem;
import limberboard.writing.typing.PageTyping;

/**
 * What is worked out about a symptom in the background: first it is read and made ready for the
 * boat, then the plans are followed. For the event thread only.
 */
final class SymptomWork {
  private final SymptomTools tools;
  private final Runnable worked;
  private final Latest reads;
  private final Latest plans;
  private Optional<SymptomReading> reading = Optional.empty();
  private AtomicBoolean goOn = new AtomicBoolean();
  private int open;
  private List<SymptomFinding> problems = List.of();
  private List<SymptomFinding> remarks = List.of();
  private List<TriedCause> tried = List.of();
  private Optional<Fault> fault = Optional.empty();
  private String note = "";

  SymptomWork(SymptomTools tools, Runnable worked) {
    this.tools = tools;
    this.worked = worked;
    reads = new Latest(tools.reads());
    plans = new Latest(tools.plans());
  }

  /** Reads with this from now on; whether that is another one. */
  boolean reads(SymptomReading with) {
    boolean other = !reading.equals(Optional.of(with));
    reading = Optional.of(with);
    return other;
  }

  /** What came of reading. */
  private record Outcome(
      List<Problem> problems,
      Optional<Page<Symptom>> page,
      Workspace workspace,
      Optional<Fault> fault,
      String note) {}

  /** What came of following the plans. */
  private record Plans(List<SymptomFinding> remarks, List<TriedCause> tried) {}

  /** Begins anew after a pause. */
  void begin(PageText page, SymptomRead read) {
    goOn.set(false);
    plans.drop();
    open = 1;
    tools.pause().restart(() -> read(page, read));
  }

  private void read(PageText page, SymptomRead read) {
    if (reading.isEmpty() || !(read instanceof SymptomTable table)) {
      open = 0;
      problems = List.of();
      remarks = List.of();
      tried = List.of();
      fault = Optional.empty();
      note = "";
      worked.run();
      return;
    }
    SymptomReading with = reading.get();
    Workspace workspace = tools.session().workspace();
    Optional<Fitting> boat = tools.session().fitting();
    reads.run(
        "Reading the symptom",
        () -> outcome(with, page, table, workspace, boat),
        outcome -> take(outcome, table),
        () -> open = 0);
  }

  private static Outcome outcome(
      SymptomReading reading,
      PageText text,
      SymptomTable table,
      Workspace workspace,
      Optional<Fitting> boat) {
    PageTyping.Read typed = reading.read(text);
    List<Problem> problems = typed.problems().stream().map(MarkedProblem::problem).toList();
    boolean wrong = problems.stream().anyMatch(each -> each.severity() == Problem.Severity.ERROR);
    String taken = "";
    Optional<Page<Symptom>> page = symptom(typed);
    if (wrong || page.isEmpty()) {
      Optional<DraftSymptom> draft = DraftSymptom.of(table);
      typed = draft.isPresent() ? reading.read(draft.get().page()) : typed;
      page = draft.isPresent() ? symptom(typed) : Optional.empty();
      taken = draft.map(each -> String.join(". ", each.taken())).orElse("");
    }
    Workspace now =
        new Workspace(
            typed.library(),
            workspace.boats(),
            workspace.stocks(),
            workspace.cases(),
            workspace.problems());
    Optional<String> without = without(page, boat);
    Optional<Fault> fault =
        without.isPresent()
            ? Optional.empty()
            : Optional.of(
                Fault.of(page.orElseThrow(), boat.orElseThrow(), now.library(), now.cases()));
    return new Outcome(problems, page, now, fault, without.orElse(taken));
  }

  private static Optional<Page<Symptom>> symptom(PageTyping.Read read) {
    return read.page().flatMap(page -> page.as(Symptom.class));
  }

  /** Why there can be no tree. */
  private static Optional<String> without(Optional<Page<Symptom>> page, Optional<Fitting> boat) {
    if (page.isEmpty()) {
      return Optional.of("The tree is drawn as soon as there is a cause.");
    } else if (boat.isEmpty()) {
      return Optional.of("Choose a boat at the top, and the tree is drawn for her.");
    }
    return boat.get().fits(page.get().head().fits())
        ? Optional.empty()
        : Optional.of(
            "This page is not for " + boat.get().boat().name() + ". Choose another boat.");
  }

  private void take(Outcome outcome, SymptomTable table) {
    problems =
        outcome.problems().stream().map(problem -> SymptomFinding.of(problem, table)).toList();
    fault = outcome.fault();
    note = outcome.note();
    if (outcome.page().isEmpty()) {
      open = 0;
      remarks = List.of();
      tried = List.of();
    } else {
      follow(outcome, table);
    }
    worked.run();
  }

  private void follow(Outcome outcome, SymptomTable table) {
    AtomicBoolean mine = new AtomicBoolean(true);
    goOn = mine;
    var today = tools.session().today();
    plans.run(
        "Following the plans",
        () -> plans(outcome, table, today, mine),
        all -> {
          if (all.isPresent()) {
            open = 0;
            remarks = all.get().remarks();
            tried = all.get().tried();
            worked.run();
          }
        },
        () -> open = 0);
  }

  private static Optional<Plans> plans(
      Outcome outcome, SymptomTable table, java.time.LocalDate today, AtomicBoolean goOn) {
    List<TriedCause> tried = new ArrayList<>();
    if (outcome.fault().isPresent()) {
      for (var cause : outcome.fault().get().causes()) {
        if (!goOn.get()) {
          return Optional.empty();
        }
        if (!cause.isSomethingElse()) {
          tried.add(TriedCause.of(outcome.fault().get(), cause.id()));
        }
      }
    }
    PageReview review = PageReview.of(outcome.page().orElseThrow(), outcome.workspace(), today);
    List<SymptomFinding> found = new ArrayList<>();
    try {
      for (Remark remark : review.warnings()) {
        found.add(SymptomFinding.of(SymptomFinding.Rank.LOOK, remark, table));
      }
      for (Remark remark : review.advice(goOn::get)) {
        found.add(SymptomFinding.of(SymptomFinding.Rank.PLAN, remark, table));
      }
    } catch (CancellationException e) {
      return Optional.empty();
    }
    return Optional.of(new Plans(found, tried));
  }

  List<SymptomFinding> findings() {
    List<SymptomFinding> all = new ArrayList<>(problems);
    all.addAll(remarks);
    all.sort(java.util.Comparator.comparing(SymptomFinding::rank));
    return all;
  }

  List<TriedCause> tried() {
    return tried;
  }

  Optional<Fault> fault() {
    return fault;
  }

  String note() {
    return note;
  }

  boolean isWorking() {
    return open > 0;
  }
}
