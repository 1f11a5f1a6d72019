package limberboard.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
 * Reviews the symptom pages of a workspace; those with errors are left out until they are mended.
 */
final class Reviews {
  private final CommandContext session;
  private final WorkspaceFolders folders;
  private final Workspace workspace;

  Reviews(CommandContext session, WorkspaceFolders folders, Workspace workspace) {
    this.session = session;
    this.folders = folders;
    this.workspace = workspace;
  }

  /** What is wrong with pages, for all of them. */
  List<Problem> warnings() {
    return reviewed(PageReview::warnings);
  }

  /** What the plans make no use of; says to {@code err} how far it has come. */
  List<Problem> advice() {
    return reviewed(
            review -> {
              session.err().println("following the plans of " + review.page().id());
              session.err().flush();
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
        List<Remark> remarks = look.apply(PageReview.of(page, workspace, session.today()));
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
