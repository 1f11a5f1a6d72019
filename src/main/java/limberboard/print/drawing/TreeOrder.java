package limberboard.print.drawing;

import java.util.Locale;
import java.util.stream.Collectors;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;

/** Says how the whole of a tree is had, for who has a part of it. Stateless. */
final class TreeOrder {
  private TreeOrder() {}

  /** The command that prints it, with the answers it begins with. */
  static String asCommand(DiagnosticTree tree) {
    return "limberboard tree "
        + tree.from().fault().page().id()
        + " --boat "
        + tree.from().fault().fitting().boat().id()
        + tree.from().trail().stream()
            .map(TrailEntry::step)
            .map(TreeOrder::answer)
            .collect(Collectors.joining())
        + rarest(tree.rarest())
        + " --pdf tree.pdf";
  }

  private static String answer(TrailStep step) {
    String found =
        step instanceof TrailStep.Answered answered
            ? answered.answer()
            : step instanceof TrailStep.MadeSafe
                ? "made-safe"
                : step instanceof TrailStep.MendFailed ? "not-cured" : "?";
    return " --answer \"" + step.id() + "=" + found + "\"";
  }

  private static String rarest(double rarest) {
    return rarest == DiagnosticTree.USUAL_RAREST
        ? ""
        : " --rarest " + String.format(Locale.ROOT, "%s", rarest);
  }
}
