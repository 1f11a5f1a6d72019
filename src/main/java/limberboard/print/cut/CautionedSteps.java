package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import limberboard.boat.WorkCaution;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.text.InlineText;
import limberboard.words.Phrases;

/**
 * Steps with the names of the cautions that bite at them: a step is an entry of a numbered list,
 * and its names stand before its first words.
 *
 * @param cautions those of the work
 */
record CautionedSteps(List<WorkCaution> cautions) {

  /** The blocks, their steps named. */
  List<Block> named(List<Block> blocks) {
    return blocks.stream().map(this::named).toList();
  }

  private Block named(Block block) {
    return block instanceof Block.Items items && items.numbered()
        ? new Block.Items(
            true, items.start(), items.tight(), items.items().stream().map(this::step).toList())
        : block;
  }

  private List<Block> step(List<Block> step) {
    Phrases words = new Phrases(text(step));
    List<WorkCaution> here = cautions.stream().filter(caution -> caution.bitesIn(words)).toList();
    if (here.isEmpty()) {
      return step;
    }
    List<Block> named = new ArrayList<>(step);
    if (step.get(0) instanceof Block.Paragraph first) {
      List<Inline> runs = new ArrayList<>(Cautions.names(here));
      runs.addAll(first.text());
      named.set(0, new Block.Paragraph(runs));
    } else {
      named.add(0, new Block.Paragraph(Cautions.names(here)));
    }
    return named;
  }

  /** What a step says, with what stands in lists of its own. */
  private static String text(List<Block> step) {
    StringBuilder text = new StringBuilder();
    for (Block block : step) {
      if (block instanceof Block.Paragraph paragraph) {
        text.append(InlineText.of(paragraph.text())).append(' ');
      } else if (block instanceof Block.Items items) {
        items.items().forEach(item -> text.append(text(item)));
      }
    }
    return text.toString();
  }
}
