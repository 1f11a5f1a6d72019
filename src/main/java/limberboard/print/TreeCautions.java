package limberboard.print;

import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;

/**
 * Collects the cautions of a diagnostic tree: the symptom's, then those of its checks and of the
 * pages of its mends, with the materials they use. Immutable.
 */
final class TreeCautions {
  private final Library library;

  TreeCautions(Library library) {
    this.library = library;
  }

  /** The cautions as the part that comes first. */
  Optional<Part> part(DiagnosticTree tree, Cutting cutting) {
    Cautions cautions = new Cautions(cutting);
    cautions.add(tree.from().fault().page().details().first());
    for (Fork fork : tree.forks()) {
      if (!(fork.step() instanceof DoMend)) {
        cautions.add(of(fork.step(), cutting), fork.step().text());
      }
    }
    for (Fork fork : tree.forks()) {
      if (fork.step() instanceof DoMend) {
        cautions.add(of(fork.step(), cutting), fork.step().text());
      }
    }
    return cautions.part();
  }

  /** The ids of the cautions of one step. */
  List<String> of(NextStep step, Cutting cutting) {
    if (step instanceof DoCheck check) {
      return check.check().check().cautions();
    }
    return step instanceof DoMend
        ? library
            .page(step.id())
            .map(page -> new PageCutter(library).cut(page, cutting.fitting()))
            .map(cut -> cut.cautions().stream().map(Block.CautionBox::id).toList())
            .orElse(List.of())
        : List.of();
  }
}
