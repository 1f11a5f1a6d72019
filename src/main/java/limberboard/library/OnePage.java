package limberboard.library;

import java.util.Optional;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;

/**
 * Reads a page from a text by itself, without looking at any other: for a text that is in no file,
 * such as what stood in a page once.
 */
public final class OnePage {
  private OnePage() {}

  /**
   * The page; empty where the text is no page that can be read.
   *
   * @param path of its file, relative to the workspace
   * @param kind what its folder holds
   * @param text the whole text
   */
  public static Optional<Page<?>> read(String path, Kind kind, String text) {
    String plain = text.replace("\r\n", "\n").replace("\uFEFF", "");
    return path.endsWith(".md")
        ? new PageParser().parse(path, kind, plain).page()
        : Optional.empty();
  }
}
