package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.InlineText;

/**
 * What keeps a fault from coming back: how often the mend itself is due, when to look again, and
 * the work done at intervals whose pages point to the mend.
 *
 * @param library the pages
 * @param fitting the boat today
 */
record Prevention(Library library, Fitting fitting) {
  private static final List<String> TELLING = List.of("How often", "Look again");

  /** Sentences; none when the library says nothing. */
  List<String> of(String mend) {
    List<String> sentences = new ArrayList<>();
    library.procedure(mend).ifPresent(page -> sentences.addAll(facts(page)));
    for (String id : library.linksTo(mend)) {
      library
          .procedure(id)
          .filter(page -> page.details().interval().isPresent())
          .filter(page -> fitting.fits(page.head().fits()))
          .ifPresent(page -> sentences.addAll(facts(page)));
    }
    return List.copyOf(sentences);
  }

  private List<String> facts(Page<Procedure> page) {
    CutPage cut = new PageCutter(library).cut(page, Optional.of(fitting));
    return cut.part(Part.Role.AGAIN).stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Facts.class::isInstance)
        .flatMap(block -> ((Block.Facts) block).facts().stream())
        .filter(fact -> TELLING.contains(fact.name()))
        .map(fact -> page.title() + ". " + fact.name() + ": " + InlineText.of(fact.value()) + ".")
        .toList();
  }
}
