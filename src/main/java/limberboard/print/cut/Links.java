package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;

/** Rows of links to pages. Immutable. */
public final class Links {
  private final CutContext cutting;

  Links(CutContext cutting) {
    this.cutting = cutting;
  }

  /** The pages, one after the other with commas. */
  List<Inline> joined(List<String> ids) {
    List<Inline> joined = new ArrayList<>();
    for (String id : ids) {
      if (!joined.isEmpty()) {
        joined.add(new Inline.Text(", "));
      }
      joined.add(cutting.link(id));
    }
    return joined;
  }

  /** A fact whose value is the pages; empty when there are none. */
  Optional<Block.Fact> fact(String name, List<String> ids) {
    return ids.isEmpty() ? Optional.empty() : Optional.of(new Block.Fact(name, joined(ids)));
  }
}
