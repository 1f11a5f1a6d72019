package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.trace.DiagnosticTree;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** Says how a diagnostic tree is read, and what it leaves out. */
final class TreeReading {
  private TreeReading() {}

  /**
   * The part.
   *
   * @param goingOn how one goes from fork to fork in this output
   */
  static Part part(DiagnosticTree tree, String goingOn) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Expect about "
            + Minutes.words(tree.root().expectedMinutes())
            + " of your time on average until it is mended or with the yard, by estimate. Some ways"
            + " are shorter, some much longer.");
    lines.add(goingOn);
    lines.add(
        "“From here about” is your time on average from that step on. The figure beside an answer"
            + " is its chance. Both rest on this: "
            + restsOn(tree)
            + ".");
    lines.add("“Can't tell” is an answer too. Do not guess.");
    if (tree.notDrawn() > 0) {
      lines.add(leftOut(tree));
    }
    return new Part(
        Part.Role.FACTS,
        "How to read it",
        List.of(Block.Items.dotted(lines.stream().map(Inline::text).toList())));
  }

  /** Where the chances come from, without how many of the cases had one particular cause. */
  private static String restsOn(DiagnosticTree tree) {
    return tree.from().ranking().get(0).cause().from().split(" \\(")[0];
  }

  private static String leftOut(DiagnosticTree tree) {
    return "A way taken less than once in "
        + String.format(Locale.ROOT, "%.0f", 1 / tree.rarest())
        + " is not drawn: there it says “seldom” and the likeliest cause. Ask the program, which"
        + " goes on from there. All of these together come up in "
        + PerCent.words(tree.notDrawn())
        + " of cases.";
  }
}
