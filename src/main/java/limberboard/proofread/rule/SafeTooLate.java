package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.proofread.file.TradeWords.Order;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/**
 * A step that makes something safe and stands behind the step that it protects, as happens where
 * the section for one model comes last; or that is missing where it must not be.
 */
final class SafeTooLate implements WorkRule {
  private static final int REACH = 3;

  @Override
  public String name() {
    return "safe-too-late";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    for (Order order : around.words().orders()) {
      List<Phrase> with = around.phrases(order.with());
      boolean holds =
          with.isEmpty() || job.passages().stream().anyMatch(passage -> has(passage, with));
      if (holds) {
        look(job, order, around, found);
      }
    }
    return found;
  }

  private void look(ReadWork job, Order order, Surroundings around, List<PageRemark> found) {
    Optional<TextPiece> danger = Optional.empty();
    for (TextPiece passage : job.passages()) {
      if (has(passage, around.phrases(order.first()))) {
        danger
            .filter(before -> passage.isStep() && !before.heading().startsWith("Before"))
            .ifPresent(before -> found.add(late(job, before, passage, order, around)));
        return;
      }
      if (danger.isEmpty() && passage.isStep() && has(passage, around.phrases(order.then()))) {
        danger = Optional.of(passage);
      }
    }
    danger
        .filter(step -> order.always())
        .ifPresent(step -> found.add(missing(job, step, order, around)));
  }

  private static boolean has(TextPiece step, List<Phrase> phrases) {
    for (Sentence sentence : step.sentences()) {
      for (Phrase phrase : phrases) {
        int at = phrase.in(sentence);
        if (at >= 0 && !sentence.deniedBefore(at, REACH) && !sentence.laterBefore(at, REACH)) {
          return true;
        }
      }
    }
    return false;
  }

  private PageRemark late(
      ReadWork job, TextPiece before, TextPiece late, Order order, Surroundings around) {
    return PageRemark.at(
        this,
        Gravity.HURTS,
        job.page(),
        around.line(job, late),
        order.first().get(0),
        NotListed.where(job, late)
            + " makes safe what step "
            + before.step()
            + " on line "
            + before.line()
            + " has begun already: "
            + order.why(),
        "put it before that step");
  }

  private PageRemark missing(ReadWork job, TextPiece step, Order order, Surroundings around) {
    return PageRemark.at(
        this,
        Gravity.HURTS,
        job.page(),
        around.line(job, step),
        order.first().get(0),
        NotListed.where(job, step) + " begins, and nothing has made it safe: " + order.why(),
        "say before it: " + order.first().get(0));
  }
}
