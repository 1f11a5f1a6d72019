package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.AccessWays;
import limberboard.boat.Fitting;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.words.AccessWords;
import limberboard.words.Sentences;

/** What must be opened, lifted, lowered or hauled out first, in its order, with the time. */
final class AccessPart {
  private final CutContext cutting;

  AccessPart(CutContext cutting) {
    this.cutting = cutting;
  }

  /** What is opened first on this boat, in one line; without a boat, what the page asks for. */
  Optional<Block> inBrief(List<String> wanted) {
    List<List<Inline>> each = new ArrayList<>();
    if (cutting.fitting().isPresent()) {
      for (Access access : toOpen(cutting.fitting().get(), wanted)) {
        each.add(Inline.text(AccessWords.of(access)));
      }
    } else {
      wanted.forEach(id -> each.add(Inline.text(title(id))));
    }
    return InBrief.line("To get there", each);
  }

  /** The minutes it takes on this boat; empty without a boat. */
  Optional<Double> minutes(List<String> wanted) {
    return cutting.fitting().map(boat -> new AccessWays(boat).minutes(wanted, Set.of()));
  }

  /** What is opened first, in one line; empty when there is nothing to open. */
  Optional<String> inOneLine(List<String> wanted) {
    List<String> titles =
        cutting
            .fitting()
            .map(boat -> toOpen(boat, wanted).stream().map(Access::title).toList())
            .orElseGet(() -> wanted.stream().map(this::title).toList());
    return titles.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join(", ", titles.stream().map(Sentences::lowered).toList()));
  }

  private static List<Access> toOpen(Fitting fitting, List<String> wanted) {
    return new AccessWays(fitting).toOpen(wanted, Set.of());
  }

  /** What an access is called on any model that knows it. */
  private String title(String id) {
    return cutting.library().all(Model.class).stream()
        .map(Page::details)
        .flatMap(model -> model.access(id).stream())
        .map(Access::title)
        .findFirst()
        .orElseGet(() -> Sentences.spoken(id));
  }
}
