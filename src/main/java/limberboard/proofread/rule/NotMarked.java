package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/**
 * Things without a page that a step takes and of which nothing says that they are on no list:
 * whoever packs by the list stands before the work without them.
 */
final class NotMarked implements WorkRule {
  private static final int REACH = 3;
  private static final List<Phrase> MARKS =
      Phrase.all(List.of("on the list", "likewise", "the yard", "the rigger", "sailmaker"));

  @Override
  public String name() {
    return "not-marked";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (TradeWords.Brought brought : around.words().brought()) {
      if (brought.listed().stream().noneMatch(job::lists)) {
        look(job, brought, around, found);
      }
    }
    return found;
  }

  /** Whoever has read once that it is on no list knows it for the rest of the page. */
  private void look(
      ReadWork job, TradeWords.Brought brought, Surroundings around, List<PageRemark> found) {
    List<Phrase> words = around.phrases(brought.words());
    List<Phrase> unless = around.phrases(brought.unless());
    PageRemark first = null;
    for (TextPiece step : job.steps()) {
      for (Sentence sentence : step.sentences()) {
        for (Phrase phrase : words) {
          int at = phrase.in(sentence);
          if (at < 0 || unless.stream().anyMatch(sentence::has)) {
            continue;
          }
          if (MARKS.stream().anyMatch(sentence::has)) {
            return;
          }
          if (first == null && !sentence.deniedBefore(at, REACH)) {
            first = finding(job, step, phrase, around);
          }
        }
      }
    }
    if (first != null) {
      found.add(first);
    }
  }

  private PageRemark finding(ReadWork job, TextPiece step, Phrase phrase, Surroundings around) {
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        job.page(),
        around.line(job, step),
        phrase.written(),
        NotListed.where(job, step) + " takes “" + phrase.written() + "”, which can be on no list",
        "write (not on the list) behind it");
  }
}
