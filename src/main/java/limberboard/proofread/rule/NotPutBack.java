package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/**
 * What a step takes off, out or shut for the work, and no later words of the page put back: a shore
 * lead that stays ashore, a pump without its fuse, a helm that stays lashed. Checks end where the
 * next one begins, and a closing paragraph may leave things as they are to lie.
 */
final class NotPutBack implements WorkRule {
  private static final int REACH = 3;

  @Override
  public String name() {
    return "not-put-back";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    if (!job.isCheck()) {
      around.words().back().forEach(back -> look(job, back, around, found));
    }
    return found;
  }

  private void look(
      ReadWork job, TradeWords.Back back, Surroundings around, List<PageRemark> found) {
    List<Phrase> off = around.phrases(back.off());
    List<Phrase> on = around.phrases(back.on());
    List<Phrase> unless = around.phrases(back.unless());
    PageRemark owed = null;
    for (TextPiece step : job.passages()) {
      for (Sentence sentence : step.sentences()) {
        if (owed == null && step.step() > 0 && unless.stream().noneMatch(sentence::has)) {
          owed = owed(job, step, sentence, off, back, around);
        }
        if (on.stream().anyMatch(sentence::has)) {
          owed = null;
        }
      }
    }
    if (owed != null) {
      found.add(owed);
    }
  }

  private PageRemark owed(
      ReadWork job,
      TextPiece step,
      Sentence sentence,
      List<Phrase> off,
      TradeWords.Back back,
      Surroundings around) {
    for (Phrase phrase : off) {
      int at = phrase.in(sentence);
      if (at >= 0 && !sentence.deniedBefore(at, REACH)) {
        return PageRemark.at(
            this,
            Gravity.MISLEADS,
            job.page(),
            around.line(job, step),
            phrase.written(),
            NotListed.where(job, step)
                + " says “"
                + phrase.written()
                + "”, and nothing after it is put back",
            "say at the end “" + back.on().get(0).replace("=", "") + "”, or that it stays so");
      }
    }
    return null;
  }
}
