package limberboard.desktop.workspace.findings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.FutureEntries;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.findings.PlanWarnings;
import limberboard.findings.Repair;
import limberboard.letters.next.NextList;
import limberboard.library.Library;
import limberboard.library.problem.Problem;
import limberboard.search.MissedSearches;
import limberboard.search.TextWords;

/**
 * Everything found in the workspace, in one list: what reading it says, what the planner says, and
 * what to write next. Without Swing; for the event thread only.
 */
public final class FindingsModel extends Observed {
  private final FindingsOutside outside;
  private final Latest looking;
  private List<WorkspaceFinding> all = List.of();
  private String words = "";
  private Optional<FindingKind> kind = Optional.empty();
  private Optional<Workspace> looked = Optional.empty();
  private boolean under;

  /** A model that has not looked yet. */
  public FindingsModel(FindingsOutside outside) {
    this.outside = outside;
    this.looking = new Latest(outside.looking());
  }

  /** Whether it is being looked for. */
  boolean isLooking() {
    return under;
  }

  /** Whether it has been looked for at all. */
  boolean hasLooked() {
    return looked.isPresent();
  }

  /** All findings, those first that do not work. */
  public List<WorkspaceFinding> all() {
    return all;
  }

  /** Those that the filter lets through. */
  public List<WorkspaceFinding> shown() {
    return all.stream()
        .filter(each -> kind.isEmpty() || kind.get() == each.kind())
        .filter(each -> words.isBlank() || each.has(words))
        .toList();
  }

  /** How many there are of a kind. */
  int count(FindingKind of) {
    return (int) all.stream().filter(each -> each.kind() == of).count();
  }

  /** The kind that is shown; empty for all. */
  Optional<FindingKind> kind() {
    return kind;
  }

  /** Lets only this kind through, or all. */
  public void kind(Optional<FindingKind> only) {
    kind = only;
    tell();
  }

  /** Lets only those through in which these words stand. */
  public void filter(String text) {
    words = text;
    tell();
  }

  /** Looks, unless the workspace is as it was when it was last looked at. */
  public void look() {
    Workspace now = outside.session().workspace();
    if (!outside.session().isRead() || looked.filter(before -> before == now).isPresent()) {
      return;
    }
    looked = Optional.of(now);
    LocalDate today = outside.session().today();
    under = true;
    tell();
    looking.run("Following the plans", () -> found(now, today), this::take, this::failed);
  }

  private List<WorkspaceFinding> found(Workspace now, LocalDate today) {
    outside.guard().begins("looking for findings");
    Library library = now.library();
    List<WorkspaceFinding> found = new ArrayList<>();
    for (Problem problem : now.problems()) {
      boolean broken = problem.severity() == Problem.Severity.ERROR;
      found.add(
          WorkspaceFinding.of(problem, broken ? FindingKind.BROKEN : FindingKind.LOOK, library));
    }
    FutureEntries future = new FutureEntries(outside.folders(), today);
    now.boats().stream()
        .flatMap(boat -> future.of(boat).stream())
        .forEach(problem -> found.add(WorkspaceFinding.of(problem, FindingKind.LOOK, library)));
    new PlanWarnings(outside.folders(), now, today)
        .warnings()
        .forEach(problem -> found.add(WorkspaceFinding.of(problem, FindingKind.PLAN, library)));
    new NextList(now, TextWords.read(outside.folders(), List.of()))
        .of(List.of(), List.of(), new MissedSearches(outside.folders()).all())
        .forEach(hint -> found.add(WorkspaceFinding.of(hint, library)));
    found.sort(Comparator.comparing(WorkspaceFinding::kind));
    return found;
  }

  private void take(List<WorkspaceFinding> found) {
    under = false;
    all = List.copyOf(found);
    tell();
  }

  private void failed() {
    under = false;
    looked = Optional.empty();
    tell();
  }

  /** Mends a finding by its one step; without effect where there is none. */
  public void repair(WorkspaceFinding finding) {
    finding
        .repair()
        .ifPresent(
            step ->
                outside
                    .writing()
                    .run("Writing a repair", () -> repair(step), wrong -> repaired(step, wrong)));
  }

  private Optional<Problem> repair(Repair step) {
    outside.guard().begins("writing a repair");
    return step.make(outside.folders());
  }

  private void repaired(Repair step, Optional<Problem> wrong) {
    wrong.ifPresentOrElse(
        problem -> outside.notices().warn(problem.toString() + "."),
        () -> outside.notices().tell("Mended: " + step.words()));
    outside.changed().run();
  }
}
