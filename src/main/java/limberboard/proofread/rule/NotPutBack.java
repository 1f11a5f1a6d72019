package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    Trigger off = Trigger.of(back.off(), back.unless(), REACH, around);
    List<Phrase> on = around.phrases(back.on());
    Optional<Trigger.Place> owed = Optional.empty();
    for (TextPiece passage : job.passages()) {
      for (Sentence sentence : passage.sentences()) {
        if (owed.isEmpty() && passage.isStep()) {
          owed = off.in(sentence).map(phrase -> new Trigger.Place(passage, phrase));
        }
        if (on.stream().anyMatch(sentence::has)) {
          owed = Optional.empty();
        }
      }
    }
    owed.ifPresent(place -> found.add(finding(job, place, back, around)));
  }

  private PageRemark finding(
      ReadWork job, Trigger.Place place, TradeWords.Back back, Surroundings around) {
    String said = place.phrase().written();
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        job.page(),
        around.line(job, place.step()),
        said,
        NotListed.where(job, place.step())
            + " says “"
            + said
            + "”, and nothing after it puts it back",
        "say at the end “" + back.on().get(0).replace("=", "") + "”, or that it stays so");
  }
}
