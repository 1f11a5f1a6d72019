package limberboard.proofread.rule;

import limberboard.library.page.Page;

/** Where the keys of a page's header stand in its file. */
public interface HeaderLines {
  /**
   * The line of a key, or of the nearest key above it that is written.
   *
   * @param pointer the key as a JSON pointer: {@code /tools/2}
   */
  int line(Page<?> page, String pointer);
}
