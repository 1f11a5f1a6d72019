package limberboard.desktop.workspace.findings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.FutureEntries;
import limberboard.boat.Workspace;
import limberboard.findings.PlanWarnings;
import limberboard.letters.next.NextList;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.proofread.FullReadings;
import limberboard.proofread.Proofreader;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.search.MissedSearches;
import limberboard.search.TextWords;

/**
 * Looks through a workspace for findings, round by round, the quick ones first. Not for the event
 * thread.
 *
 * @param folders where its files lie
 * @param workspace what was read of them
 * @param today the day it is
 * @param words what a proofreader looks for
 */
record FindingsSearch(
    WorkspaceFolders folders, Workspace workspace, LocalDate today, TradeWordsFile words) {
  /** A round. */
  enum Round {
    /** What reading the files said. */
    READING("Looking through the files"),
    /** What cases and searches ask for. */
    NEXT("Looking what to write next"),
    /** What a proofreader finds, and which pages are to be read. */
    PROOF("Proofreading"),
    /** What the planner says. */
    PLANS("Following the plans");

    private final String doing;

    Round(String doing) {
      this.doing = doing;
    }

    /** What is done, as a person reads it. */
    String doing() {
      return doing;
    }
  }

  /** What a round finds. */
  List<WorkspaceFinding> found(Round round) {
    return switch (round) {
      case READING -> reading();
      case NEXT -> next();
      case PROOF -> proof();
      case PLANS -> plans();
    };
  }

  private Library library() {
    return workspace.library();
  }

  private WorkspaceFinding of(Problem problem) {
    boolean broken = problem.severity() == Problem.Severity.ERROR;
    return WorkspaceFinding.of(problem, broken ? FindingKind.BROKEN : FindingKind.LOOK, library());
  }

  private List<WorkspaceFinding> reading() {
    List<WorkspaceFinding> found = new ArrayList<>();
    workspace.problems().forEach(problem -> found.add(of(problem)));
    FutureEntries future = new FutureEntries(folders, today);
    workspace.boats().stream()
        .flatMap(boat -> future.of(boat).stream())
        .forEach(problem -> found.add(of(problem)));
    return found;
  }

  private List<WorkspaceFinding> next() {
    return new NextList(workspace, TextWords.read(folders, List.of()))
        .of(List.of(), List.of(), new MissedSearches(folders).all()).stream()
            .map(hint -> WorkspaceFinding.of(hint, library()))
            .toList();
  }

  private List<WorkspaceFinding> proof() {
    List<WorkspaceFinding> found = new ArrayList<>();
    words.problems().forEach(problem -> found.add(of(problem)));
    Proofreader reader = new Proofreader(folders, library(), words.words());
    FullReadings readings = new FullReadings(folders, words.words(), today);
    for (Page<?> page : library().pages()) {
      reader.read(page).open().forEach(remark -> found.add(WorkspaceFinding.of(remark, library())));
      readings.due(page).ifPresent(age -> found.add(WorkspaceFinding.of(age, library())));
    }
    return found;
  }

  private List<WorkspaceFinding> plans() {
    return new PlanWarnings(folders, workspace, today)
        .warnings().stream()
            .map(problem -> WorkspaceFinding.of(problem, FindingKind.PLAN, library()))
            .toList();
  }
}
