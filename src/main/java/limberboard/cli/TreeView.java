package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.cli.TraceView.CautionView;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.Finding;
import limberboard.trace.RankedCause;

/** A diagnostic tree as {@code tree --json} prints it; the keys are documented and stay. */
record TreeView(
    String symptom,
    String boat,
    List<CautionView> cautions,
    double expectedMinutes,
    double atLeastMinutes,
    double rarest,
    double notDrawn,
    List<ForkView> forks) {
  private static final int LEADING = 3;

  /** A cause that leads at a fork. */
  record LeadingView(String cause, double chance) {
    static LeadingView of(RankedCause ranked) {
      return new LeadingView(ranked.cause().id(), ranked.chance());
    }

    /** The likeliest at a fork. */
    static List<LeadingView> of(Fork fork) {
      return fork.at().ranking().stream().limit(LEADING).map(LeadingView::of).toList();
    }
  }

  /** One way a step can turn out. */
  record BranchView(
      String finding, String kind, double chance, String end, Optional<Integer> then) {
    static BranchView of(Branch branch) {
      return new BranchView(
          finding(branch.finding()),
          kindOf(branch.finding()),
          branch.chance(),
          branch.end().name().toLowerCase(Locale.ROOT).replace('_', '-'),
          branch.then().map(Fork::number));
    }

    /** An answer as it is given to {@code --answer}. */
    private static String finding(Finding finding) {
      return finding instanceof Finding.Answer answer ? answer.answer() : finding.words();
    }

    private static String kindOf(Finding finding) {
      if (finding instanceof Finding.Answer) {
        return "answer";
      } else if (finding instanceof Finding.CouldNotTell) {
        return "cant-tell";
      }
      if (finding instanceof Finding.MadeSafe) {
        return Check.MADE_SAFE;
      }
      return finding instanceof Finding.Mended ? "mended" : "not-cured";
    }
  }

  /** A fork. */
  record ForkView(
      int number,
      String kind,
      String id,
      String text,
      double minutes,
      double expectedMinutes,
      double chance,
      List<String> open,
      List<String> cautions,
      Optional<String> makeSafe,
      List<LeadingView> leading,
      List<BranchView> branches) {
    static ForkView of(Fork fork) {
      return new ForkView(
          fork.number(),
          fork.step().kind(),
          fork.step().id(),
          fork.step().text(),
          fork.step().minutes(),
          fork.expectedMinutes(),
          fork.chance(),
          fork.step().toOpen().stream().map(Access::title).toList(),
          CautionView.ids(fork.step().cautions()),
          fork.step().safety(),
          LeadingView.of(fork),
          fork.branches().stream().map(BranchView::of).toList());
    }
  }

  static TreeView of(DiagnosticTree tree) {
    return new TreeView(
        tree.from().fault().page().id(),
        tree.from().fault().fitting().boat().id(),
        CautionView.of(tree.cautions()),
        tree.root().expectedMinutes(),
        tree.from().atLeastMinutes(),
        tree.rarest(),
        tree.notDrawn(),
        tree.forks().stream().map(ForkView::of).toList());
  }
}
