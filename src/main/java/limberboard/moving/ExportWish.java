package limberboard.moving;

import java.util.List;
import java.util.Optional;
import limberboard.library.value.BoatSystem;

/**
 * What is to be exported. With nothing chosen it is the whole workspace: pages, words, boats and
 * cases, but no letters, which are other people's.
 *
 * @param model the pages for boats of this model
 * @param system the pages filed under this
 * @param pages these pages
 */
public record ExportWish(Optional<String> model, Optional<BoatSystem> system, List<String> pages) {
  /** Copies the list. */
  public ExportWish {
    pages = List.copyOf(pages);
  }

  /** All of it. */
  public static ExportWish whole() {
    return new ExportWish(Optional.empty(), Optional.empty(), List.of());
  }

  /** Whether it is all of it. */
  boolean isWhole() {
    return model.isEmpty() && system.isEmpty() && pages.isEmpty();
  }
}
