package limberboard.desktop.write.state;

import java.util.Optional;
import limberboard.findings.FileRepair;
import limberboard.library.problem.Problem;
import limberboard.proofread.rule.PageRemark;
import limberboard.writing.PageText.Stretch;
import limberboard.writing.typing.MarkedProblem;

/**
 * Something found in a text that is being typed.
 *
 * @param marked what is wrong, with the letters it is about
 * @param remark what a proofreader says; empty where it is a problem of the file
 * @param repair the one step that mends it, where that is certain
 */
public record TextFinding(
    MarkedProblem marked, Optional<PageRemark> remark, Optional<? extends FileRepair> repair) {
  private static final int MOST_LETTERS = 60;

  /** What is wrong. */
  public Problem problem() {
    return marked.problem();
  }

  /** Whether single words are meant rather than a whole line, which would be too much to mark. */
  public boolean isSharp() {
    return place().filter(at -> at.to() - at.from() <= MOST_LETTERS).isPresent();
  }

  /** The letters that it is about. */
  public Optional<Stretch> place() {
    return marked.place();
  }
}
