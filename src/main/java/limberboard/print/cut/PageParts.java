package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/** The parts that every kind of page can have. */
public final class PageParts {
  private final CutContext cutting;

  PageParts(CutContext cutting) {
    this.cutting = cutting;
  }

  /** Says that the page is not for this boat at all, or, without a boat, for which boats it is. */
  Optional<Part> fit(Page<?> page) {
    Optional<String> against = cutting.against(page.head().fits());
    Optional<String> sentence =
        against
            .map(
                reason ->
                    "This page is not for "
                        + cutting.boatName()
                        + ", which "
                        + CutContext.predicate(reason)
                        + ".")
            .or(
                () ->
                    cutting
                        .onlyFor(page.head().fits())
                        .map(words -> "This page is " + words + "."));
    return sentence.map(text -> notice("", text));
  }

  /** What was left out for the boat, and why; asked last. */
  Optional<Part> leftOut() {
    List<List<Inline>> lines = cutting.leftOut().stream().map(Inline::text).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.LEFT_OUT,
                "Left out for " + cutting.boatName(),
                List.of(Block.Items.dotted(lines))));
  }

  /** Where the page's facts come from. */
  Optional<Part> sources(Page<?> page) {
    List<List<Inline>> lines = page.head().sources().stream().map(Inline::text).toList();
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.SOURCES, "Sources", List.of(Block.Items.dotted(lines))));
  }

  /** Where on the boat it is, in words; empty when the page does not say. */
  Optional<String> zones(Page<?> page) {
    List<String> titles = new ArrayList<>();
    for (String zone : page.head().zones()) {
      titles.add(cutting.words().zone(zone, cutting.fitting()));
    }
    return titles.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", titles));
  }

  /** One notice. */
  public static Part notice(String title, String text) {
    return new Part(Part.Role.NOTICE, title, List.of(new Block.Notice(Inline.text(text))));
  }
}
