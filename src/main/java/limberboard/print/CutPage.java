package limberboard.print;

import java.util.List;
import java.util.Optional;
import limberboard.library.Kind;

/**
 * A page cut to a boat: everything that any output shows, in its order, and nothing else.
 *
 * @param id the page's id
 * @param kind its kind
 * @param title its title
 * @param summary one sentence, or empty
 * @param cutFor which boat it is cut to, in words, or empty
 * @param parts the parts in order, cautions first
 */
public record CutPage(
    String id, Kind kind, String title, String summary, String cutFor, List<Part> parts) {
  /** Copies the list. */
  public CutPage {
    parts = List.copyOf(parts);
  }

  /** The part with this role, if the page has it. */
  public Optional<Part> part(Part.Role role) {
    return parts.stream().filter(part -> part.role() == role).findFirst();
  }

  /** The cautions, in the order in which they are shown. */
  public List<Block.CautionBox> cautions() {
    return parts.stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.CautionBox.class::isInstance)
        .map(Block.CautionBox.class::cast)
        .toList();
  }
}
