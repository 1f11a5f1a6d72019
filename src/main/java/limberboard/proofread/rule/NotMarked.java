package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;

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
      Trigger thing = Trigger.of(brought.words(), brought.unless(), REACH, around);
      if (brought.listed().stream().noneMatch(job::lists) && !isMarked(thing, job)) {
        thing.firstIn(job).ifPresent(place -> found.add(finding(job, place, around)));
      }
    }
    return found;
  }

  /** Whoever has read once that it is on no list knows it for the rest of the page. */
  private static boolean isMarked(Trigger thing, ReadWork job) {
    return job.steps().stream()
        .flatMap(step -> step.sentences().stream())
        .anyMatch(sentence -> thing.isNamedIn(sentence) && hasMark(sentence));
  }

  private static boolean hasMark(Sentence sentence) {
    return MARKS.stream().anyMatch(sentence::has);
  }

  private PageRemark finding(ReadWork job, Trigger.Place place, Surroundings around) {
    String said = place.phrase().written();
    return PageRemark.at(
        this,
        Gravity.MISLEADS,
        job.page(),
        around.line(job, place.step()),
        said,
        NotListed.where(job, place.step()) + " takes “" + said + "”, which can be on no list",
        "write (not on the list) behind it");
  }
}
