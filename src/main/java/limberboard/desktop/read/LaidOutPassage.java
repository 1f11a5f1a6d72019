package limberboard.desktop.read;

import java.awt.Rectangle;
import java.util.List;

/**
 * A paragraph, a heading, an item of a list or what else stands by itself on a page.
 *
 * @param role what it is on its page
 * @param start where it begins in the text of the page, after the mark of an item
 * @param end after its last letter
 * @param runs its text, line by line
 * @param box the room it takes, in pixels of the page
 */
record LaidOutPassage(Role role, int start, int end, List<Run> runs, Rectangle box) {
  LaidOutPassage {
    runs = List.copyOf(runs);
    box = new Rectangle(box);
  }

  /** What a passage is on its page. */
  sealed interface Role {}

  /**
   * A heading.
   *
   * @param level 1 to 6
   */
  record Heading(int level) implements Role {}

  /** A paragraph. */
  record Paragraph() implements Role {}

  /** Text kept line by line. */
  record Verbatim() implements Role {}

  /**
   * Text of an item of a list.
   *
   * @param list which list of the page
   * @param depth how many lists it stands in, from 1
   * @param number its number, or 0 when the list has dots
   * @param first whether the item begins with it
   */
  record Item(int list, int depth, int number, boolean first) implements Role {
    /** What stands before the item in plain text. */
    String mark() {
      return number > 0 ? number + ". " : "• ";
    }
  }

  /**
   * Text in a cell of a table.
   *
   * @param table which table of the page; one within another counts as part of it
   * @param row which row of the page
   * @param cell which cell of the page
   * @param head whether it says what stands below or beside it
   */
  record Cell(int table, int row, int cell, boolean head) implements Role {}

  /**
   * A picture.
   *
   * @param shows what it shows, in words
   */
  record Drawn(String shows) implements Role {}
}
