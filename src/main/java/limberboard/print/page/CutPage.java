package limberboard.print.page;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Kind;

/**
 * A page cut to a boat: everything that any output shows, in its order, and nothing else.
 *
 * @param id the page's id
 * @param kind its kind
 * @param label what it is, in one word for the reader: its kind, {@code list} for a sheet that is
 *     no page of the library, {@code tree}, or {@code card}
 * @param title its title
 * @param summary one sentence, or empty
 * @param cutFor which boat it is cut to, in words, or empty
 * @param parts the parts in order, cautions in two lines first and in full last
 */
public record CutPage(
    String id,
    Kind kind,
    String label,
    String title,
    String summary,
    String cutFor,
    List<Part> parts) {
  /** The label of sheets that are lists to be worked through; they are set close. */
  public static final String LIST = "list";

  /** The label of diagnostic trees by numbers; they are set close, in two columns. */
  public static final String TREE = "tree";

  /** The label of what is one drawing on one sheet, with narrow margins and nothing beside it. */
  public static final String CARD = "card";

  /** Copies the list. */
  public CutPage {
    parts = List.copyOf(parts);
  }

  /** A page that is called by its kind. */
  public CutPage(
      String id, Kind kind, String title, String summary, String cutFor, List<Part> parts) {
    this(id, kind, kind.word(), title, summary, cutFor, parts);
  }

  /** The part with this role, if the page has it. */
  public Optional<Part> part(Part.Role role) {
    return parts.stream().filter(part -> part.role() == role).findFirst();
  }

  /** The cautions that stand in full, in the order in which they are shown. */
  public List<Block.CautionBox> cautions() {
    return blocks(Block.CautionBox.class);
  }

  /** The cautions that stand in two lines, in the order in which they are shown. */
  public List<Block.ShortCaution> shortCautions() {
    return blocks(Block.ShortCaution.class);
  }

  private <B extends Block> List<B> blocks(Class<B> kind) {
    return parts.stream()
        .flatMap(part -> part.blocks().stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }
}
