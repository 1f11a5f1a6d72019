package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.page.SumUse;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.workings.sums.Answer;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Result;
import limberboard.workings.sums.ShownSum;
import limberboard.workings.sums.SumText;
import limberboard.workings.sums.Sums;

/**
 * The sums of a page: what was put in, the working, the result, where it does not apply, and where
 * it comes from.
 */
final class SumsPart {
  private static final int HEADING = 3;

  private final CutContext cutting;
  private final Sums sums = Sums.ofTheTrade();

  SumsPart(CutContext cutting) {
    this.cutting = cutting;
  }

  /** The part for a page's sums, of which those that do not fit the boat are left out. */
  Optional<Part> part(List<SumUse> uses) {
    List<Block> blocks = new ArrayList<>();
    for (SumUse use : uses) {
      ShownSum.of(sums, use, cutting.fitting().map(Fitting::boat))
          .filter(shown -> cutting.shows(use.fits(), shown.title()))
          .ifPresent(shown -> add(use, shown, blocks));
    }
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.WORKINGS, "Workings", blocks));
  }

  private void add(SumUse use, ShownSum shown, List<Block> blocks) {
    String only = cutting.onlyFor(use.fits()).map(words -> " (" + words + ")").orElse("");
    blocks.add(new Block.Heading(HEADING, Inline.text(shown.title() + only)));
    if (shown.reckoning() instanceof Reckoning.Done done) {
      warnings(done.answer(), shown, blocks);
      facts(done, shown.sum().text(), blocks);
    } else if (shown.reckoning() instanceof Reckoning.Refused refused) {
      refused.reasons().forEach(why -> notice("Cannot be worked out: " + why, blocks));
    }
  }

  private static void warnings(Answer answer, ShownSum shown, List<Block> blocks) {
    shown.notes().forEach(note -> notice(note, blocks));
    answer.warnings().forEach(warning -> notice(warning, blocks));
  }

  private static void notice(String text, List<Block> blocks) {
    blocks.add(new Block.Notice(Inline.text(text)));
  }

  private void facts(Reckoning.Done done, SumText text, List<Block> blocks) {
    List<Block.Fact> facts = new ArrayList<>();
    for (Result result : done.answer().results()) {
      Inline value = new Inline.Strong(Inline.text(result.text(cutting.quantities())));
      facts.add(new Block.Fact(result.title(), List.of(value)));
    }
    facts.add(Block.Fact.of("Put in", put(done, false)));
    String usual = put(done, true);
    if (!usual.isEmpty()) {
      facts.add(Block.Fact.of("Taken as usual", usual));
    }
    facts.add(Block.Fact.of("Formula", text.formula()));
    facts.add(Block.Fact.of("Working", String.join("; ", done.answer().working())));
    facts.add(Block.Fact.of("Holds for", text.holds()));
    facts.add(Block.Fact.of("Source", text.source()));
    blocks.add(new Block.Facts(facts));
  }

  private static String put(Reckoning.Done done, boolean usual) {
    return String.join(
        "; ",
        done.put().stream()
            .filter(put -> put.usual() == usual)
            .map(put -> put.input().title() + ": " + put.text())
            .toList());
  }
}
