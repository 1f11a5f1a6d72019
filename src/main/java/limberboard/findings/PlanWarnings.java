package limberboard.findings;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.KeyLines;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;
import limberboard.trace.review.PageReview;
import limberboard.trace.review.Remark;

/**
 * What the planner has to say about the symptom pages of a workspace, at the lines it is about;
 * pages with errors are left out until they are mended. Not for the event thread.
 */
public final class PlanWarnings {
  private final WorkspaceFolders folders;
  private final Workspace workspace;
  private final LocalDate today;

  /** About the pages of this workspace on this day. */
  public PlanWarnings(WorkspaceFolders folders, Workspace workspace, LocalDate today) {
    this.folders = folders;
    this.workspace = workspace;
    this.today = today;
  }

  /** What is wrong with pages, for all of them. */
  public List<Problem> warnings() {
    return reviewed(PageReview::warnings);
  }

  /**
   * What the plans make no use of, which may take minutes.
   *
   * @param begun is told of each page, by its id, as it is begun
   */
  public List<Problem> advice(Consumer<String> begun) {
    return reviewed(
            review -> {
              begun.accept(review.page().id());
              return review.advice();
            })
        .stream()
        .map(Problem::asAdvice)
        .toList();
  }

  private List<Problem> reviewed(Function<PageReview, List<Remark>> look) {
    Set<String> broken = new HashSet<>();
    for (Problem problem : workspace.problems()) {
      if (problem.severity() == Problem.Severity.ERROR) {
        broken.add(problem.file());
      }
    }
    List<Problem> found = new ArrayList<>();
    for (Page<Symptom> page : workspace.library().all(Symptom.class)) {
      if (!broken.contains(page.path())) {
        List<Remark> remarks = look.apply(PageReview.of(page, workspace, today));
        found.addAll(located(page, remarks));
      }
    }
    return found;
  }

  private List<Problem> located(Page<Symptom> page, List<Remark> remarks) {
    if (remarks.isEmpty()) {
      return List.of();
    }
    KeyLines lines = KeyLines.of(folders, page);
    return remarks.stream()
        .map(remark -> lines.warning(remark.pointer(), remark.wrong(), remark.right()))
        .toList();
  }
}
