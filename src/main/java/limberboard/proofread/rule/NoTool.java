package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/** Work that needs a tool or an access which is not listed: a torque without a torque wrench. */
final class NoTool implements WorkRule {
  private static final int REACH = 3;

  @Override
  public String name() {
    return "no-tool";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (TradeWords.Need need : around.words().needs()) {
      boolean met =
          need.tools().stream().anyMatch(job::lists)
              || need.access().stream().anyMatch(job.access()::contains);
      if (!met) {
        look(job, need, around, found);
      }
    }
    return found;
  }

  private void look(
      ReadWork job, TradeWords.Need need, Surroundings around, List<PageRemark> found) {
    List<Phrase> words = around.phrases(need.words());
    List<Phrase> unless = around.phrases(need.unless());
    for (TextPiece step : job.steps()) {
      for (Sentence sentence : step.sentences()) {
        for (Phrase phrase : words) {
          int at = phrase.in(sentence);
          if (at >= 0
              && !sentence.deniedBefore(at, REACH)
              && unless.stream().noneMatch(sentence::has)) {
            found.add(finding(job, step, phrase, need, around));
            return;
          }
        }
      }
    }
  }

  private PageRemark finding(
      ReadWork job, TextPiece step, Phrase phrase, TradeWords.Need need, Surroundings around) {
    boolean tool = !need.tools().isEmpty();
    String id = tool ? need.tools().get(0) : need.access().get(0);
    PageRemark said =
        PageRemark.at(
            this,
            Gravity.MISLEADS,
            job.page(),
            around.line(job, step),
            id,
            NotListed.where(job, step) + " says “" + phrase.written() + "”, which takes " + id,
            "add " + id + " to " + (tool ? "tools" : "access"));
    return tool && need.tools().size() == 1 && NotListed.isTool(id, around)
        ? said.mendedBy(new HeaderMend.Adds(job.pointer() + "/tools", id))
        : said;
  }
}
