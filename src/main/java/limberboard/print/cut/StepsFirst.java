package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;

/** Work whose first steps are soon reached: pictures that stand before them come after them. */
final class StepsFirst {
  private StepsFirst() {}

  /** The blocks, those before the first numbered list without their pictures. */
  static List<Block> of(List<Block> work) {
    int steps = 0;
    while (steps < work.size() && !isSteps(work.get(steps))) {
      steps++;
    }
    if (steps == work.size()) {
      return work;
    }
    List<Block> ordered = new ArrayList<>();
    List<Block> pictures = new ArrayList<>();
    work.subList(0, steps).forEach(block -> (isPicture(block) ? pictures : ordered).add(block));
    ordered.add(work.get(steps));
    ordered.addAll(pictures);
    ordered.addAll(work.subList(steps + 1, work.size()));
    return ordered;
  }

  private static boolean isSteps(Block block) {
    return block instanceof Block.Items items && items.numbered();
  }

  private static boolean isPicture(Block block) {
    return block instanceof Block.Paragraph paragraph
        && paragraph.text().size() == 1
        && paragraph.text().get(0) instanceof Inline.Picture;
  }
}
