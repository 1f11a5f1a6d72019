package limberboard.writing.save;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.List;
import limberboard.writing.PageText;

/**
 * A place where two versions of a page differ, by lines.
 *
 * @param mineFrom its first line in the one, from 0
 * @param mine the lines there; empty where the other has more
 * @param theirsFrom its first line in the other, from 0
 * @param theirs the lines there; empty where the one has more
 */
public record LineDifference(int mineFrom, List<String> mine, int theirsFrom, List<String> theirs) {
  /** Copies the lists. */
  public LineDifference {
    mine = List.copyOf(mine);
    theirs = List.copyOf(theirs);
  }

  /** All places where two versions differ, in order; line ends and the mark do not count. */
  public static List<LineDifference> between(PageText mine, PageText theirs) {
    List<AbstractDelta<String>> deltas = DiffUtils.diff(lines(mine), lines(theirs)).getDeltas();
    return deltas.stream()
        .map(
            each ->
                new LineDifference(
                    each.getSource().getPosition(),
                    each.getSource().getLines(),
                    each.getTarget().getPosition(),
                    each.getTarget().getLines()))
        .toList();
  }

  private static List<String> lines(PageText page) {
    return page.text().isEmpty() ? List.of() : List.of(page.plain().split("\n", -1));
  }
}
