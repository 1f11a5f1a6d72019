package limberboard.desktop.write.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.base.Latest;
import limberboard.findings.FileRepair;
import limberboard.findings.HeaderRepair;
import limberboard.findings.LinkRepair;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.proofread.Proofreader;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.proofread.rule.PageRemark;
import limberboard.words.Sentences;
import limberboard.writing.typing.MarkedProblem;

/**
 * Proofreads the page that is typed, off the event thread, once its text has been looked at; the
 * newest outcome wins. The other pages are gone through once for each reading of the library.
 */
final class PageProofs {
  private final WriteOutside outside;
  private final Latest proofs;
  private Optional<Made> made = Optional.empty();

  PageProofs(WriteOutside outside) {
    this.outside = outside;
    this.proofs = new Latest(outside.proofs());
  }

  /** A proofreader of a library as it was read. Belongs to the thread that proofreads. */
  private record Made(Library library, TradeWords words, Proofreader reader) {}

  /**
   * Proofreads a page whose text has just been looked at.
   *
   * @param library all pages as they were last read
   */
  void look(OpenPage page, Library library) {
    Optional<Checked> found = page.checked();
    if (found.isEmpty()) {
      return;
    }
    Checked checked = found.get();
    proofs.run("Proofreading", () -> proof(checked, library), page::proofread);
  }

  private Proofread proof(Checked checked, Library library) {
    outside.guard().begins("proofreading a text");
    Map<Problem, FileRepair> repairs = new HashMap<>();
    for (MarkedProblem each : checked.read().problems()) {
      LinkRepair.of(each.problem(), library).ifPresent(step -> repairs.put(each.problem(), step));
    }
    List<TextFinding> remarks = new ArrayList<>();
    checked.read().page().ifPresent(page -> remarks.addAll(remarks(page, checked, library)));
    return new Proofread(remarks, repairs);
  }

  private List<TextFinding> remarks(Page<?> page, Checked checked, Library library) {
    String plain = checked.text().plain();
    List<PageRemark> open = reader(library).readTyped(page, plain, checked.read().library()).open();
    List<MarkedProblem> marked =
        MarkedProblem.in(plain, open.stream().map(PageProofs::problem).toList());
    List<TextFinding> remarks = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      remarks.add(
          new TextFinding(marked.get(i), Optional.of(open.get(i)), HeaderRepair.of(open.get(i))));
    }
    return remarks;
  }

  private static Problem problem(PageRemark remark) {
    return Problem.warning(
        remark.file(), remark.line(), "", Sentences.capital(remark.wrong()), remark.right());
  }

  private Proofreader reader(Library library) {
    TradeWords words = TradeWordsFile.read(outside.folders(), library).words();
    if (made.filter(now -> now.library() == library && now.words().equals(words)).isEmpty()) {
      Proofreader reader = new Proofreader(outside.folders(), library, words);
      made = Optional.of(new Made(library, words, reader));
    }
    return made.get().reader();
  }
}
