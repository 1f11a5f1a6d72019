package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.RoundWork;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;

/**
 * What is done with a round on the boat, in the order of its page.
 *
 * @param cutting the library and the boat
 */
record RoundPart(CutContext cutting) {

  /** The work with its minutes within the round; empty for what is no round. */
  Optional<Part> part(Procedure round) {
    List<List<Inline>> each = new ArrayList<>();
    for (RoundWork work : fitting(round)) {
      each.add(
          List.of(
              cutting.link(work.work()),
              new Inline.Text(" (" + Minutes.words(minutes(work)) + ")")));
    }
    return each.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.RELATED,
                "In this round, as far as it is due",
                List.of(Block.Items.dotted(each))));
  }

  /** Minutes of all that is done with it, practised; 0 for what is no round. */
  int minutes(Procedure round) {
    return fitting(round).stream().mapToInt(this::minutes).sum();
  }

  private List<RoundWork> fitting(Procedure round) {
    return round.round().stream()
        .filter(work -> page(work).filter(this::fits).isPresent())
        .toList();
  }

  private Optional<Page<Procedure>> page(RoundWork work) {
    return cutting.library().procedure(work.work()).map(cutting::timed);
  }

  private boolean fits(Page<Procedure> page) {
    return cutting.against(page.head().fits()).isEmpty();
  }

  private int minutes(RoundWork work) {
    return work.minutes().orElseGet(() -> page(work).orElseThrow().details().minutes());
  }
}
