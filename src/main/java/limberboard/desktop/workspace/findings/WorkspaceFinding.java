package limberboard.desktop.workspace.findings;

import java.util.Locale;
import java.util.Optional;
import limberboard.cases.NextPages.Hint;
import limberboard.findings.HeaderRepair;
import limberboard.findings.Repair;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.proofread.mark.ReadingAge;
import limberboard.proofread.mark.ReadingAge.Because;
import limberboard.proofread.rule.Gravity;
import limberboard.proofread.rule.PageRemark;
import limberboard.words.Sentences;

/**
 * Something found in the workspace. Immutable.
 *
 * @param kind what kind
 * @param file the file, relative to the workspace; empty where it is about no file
 * @param line the line, from 1; 0 for the whole file
 * @param page the page's id, where it is about a page that can be read
 * @param what what was found
 * @param right what would be right, or the evidence
 * @param repair the one step that mends it, where that is certain
 */
public record WorkspaceFinding(
    FindingKind kind,
    String file,
    int line,
    Optional<String> page,
    String what,
    String right,
    Optional<Repair> repair) {

  static WorkspaceFinding of(Problem problem, FindingKind kind, Library library) {
    return new WorkspaceFinding(
        kind,
        problem.file(),
        problem.line(),
        library.pages().stream()
            .filter(page -> page.path().equals(problem.file()))
            .<String>map(Page::id)
            .findFirst(),
        (problem.key().isEmpty() ? "" : problem.key() + ": ") + problem.wrong(),
        problem.right(),
        Repair.of(problem, library));
  }

  static WorkspaceFinding of(PageRemark remark, Library library) {
    String title = library.page(remark.page()).map(Page::title).orElse(remark.page());
    return new WorkspaceFinding(
        remark.gravity() == Gravity.HURTS ? FindingKind.HURTS : FindingKind.PROOF,
        remark.file(),
        remark.line(),
        Optional.of(remark.page()),
        title + ": " + remark.wrong(),
        remark.right(),
        HeaderRepair.of(remark).map(step -> step));
  }

  static WorkspaceFinding of(ReadingAge age, Library library) {
    return new WorkspaceFinding(
        age.because() == Because.NEVER ? FindingKind.UNREAD : FindingKind.AGAIN,
        age.file(),
        0,
        Optional.of(age.page()),
        library.page(age.page()).map(Page::title).orElse(age.page()),
        age.words(),
        Optional.empty());
  }

  static WorkspaceFinding of(Hint hint, Library library) {
    Optional<? extends Page<?>> page = library.page(hint.page());
    return new WorkspaceFinding(
        FindingKind.WRITE,
        page.map(Page::path).orElse(""),
        0,
        page.map(Page::id),
        Sentences.capital(hint.todo()),
        Sentences.capital(hint.evidence()) + ".",
        Optional.empty());
  }

  /** Whether it is about the file of a page, which can be written. */
  boolean isOfPage() {
    return file.startsWith("articles/") && file.endsWith(".md");
  }

  /** Whether it says that a page is to be read in full. */
  boolean isToRead() {
    return kind == FindingKind.AGAIN || kind == FindingKind.UNREAD;
  }

  /** Whether all the words stand in it. */
  boolean has(String words) {
    String all = (file + " " + what + " " + right).toLowerCase(Locale.ROOT);
    for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
      if (!all.contains(word)) {
        return false;
      }
    }
    return true;
  }
}
