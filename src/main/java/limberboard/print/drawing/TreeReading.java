package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.TreeCut;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** Says how a diagnostic tree is read, and what it leaves out. */
final class TreeReading {
  private TreeReading() {}

  /**
   * The part that comes before the forks.
   *
   * @param goingOn how one goes from fork to fork in this output
   */
  static Part part(TreeCut cut, String goingOn) {
    List<String> lines = new ArrayList<>();
    whatIsCut(cut).ifPresent(lines::add);
    lines.add(goingOn);
    lines.addAll(lines(cut.tree()));
    lines.add("“Can't tell” is an answer too. Do not guess.");
    return part(lines);
  }

  /** What the figures mean and what is left out, as a part that comes after the forks. */
  static Part figures(TreeCut cut) {
    return part(lines(cut.tree()));
  }

  private static Part part(List<String> lines) {
    return new Part(
        Part.Role.FACTS,
        "How to read it",
        List.of(Block.Items.dotted(lines.stream().map(Inline::text).toList())));
  }

  private static List<String> lines(DiagnosticTree tree) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Expect about "
            + Minutes.words(tree.root().expectedMinutes())
            + " of your time on average until it is mended or with the yard, by estimate. Some ways"
            + " are shorter, some much longer.");
    lines.add(
        "“From here” is your time on average from that step on, by estimate. The figure beside an"
            + " answer is its chance. Both rest on this: "
            + tree.from().fault().chancesFrom()
            + ".");
    if (tree.notDrawn() > 0) {
      lines.add(leftOut(tree));
    }
    return lines;
  }

  /** How much of the tree this is, and where the rest is; nothing where it is whole. */
  static Optional<String> whatIsCut(TreeCut cut) {
    if (cut.isWhole()) {
      return Optional.empty();
    }
    DiagnosticTree tree = cut.tree();
    return Optional.of(
        "This is a part of the tree: "
            + cut.forks().size()
            + " of its "
            + CountWords.of(tree.forks().size(), "step")
            + ". "
            + ends(cut.share())
            + " “Goes on at” names the next step, with its number in"
            + " the whole tree: print that from the window (Trace, The whole tree, all levels) or"
            + " by “"
            + TreeOrder.asCommand(tree)
            + "”.");
  }

  private static String ends(double share) {
    return share > 0
        ? "Going by it ends at a mend or at handing over in "
            + PerCent.words(share)
            + " of what happens, by estimate."
        : "No way in it ends yet.";
  }

  /** Where the chances come from, without how many of the cases had one particular cause. */
  private static String leftOut(DiagnosticTree tree) {
    return "A way taken less than once in "
        + String.format(Locale.ROOT, "%.0f", 1 / tree.rarest())
        + " is not drawn: there it says “seldom” and the likeliest cause. Ask the program, which"
        + " goes on from there. All of these together come up in "
        + PerCent.words(tree.notDrawn())
        + " of cases.";
  }
}
