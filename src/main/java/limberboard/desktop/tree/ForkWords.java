package limberboard.desktop.tree;

import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/** What a tree says in words. */
final class ForkWords {
  private ForkWords() {}

  /** What kind of step it is. */
  static String kind(Fork fork) {
    return Sentences.capital(Sentences.spoken(fork.step().kind()));
  }

  /** What it costs from a fork on. */
  static String minutes(Fork fork) {
    return "about " + Minutes.words(fork.expectedMinutes()) + " from here";
  }

  /** How a branch ends that does not lead to a fork. */
  static String end(Branch branch) {
    return switch (branch.end()) {
      case MENDED -> "Mended";
      case TOO_RARE -> "Seldom";
      case FORK -> "";
    };
  }

  /** How much is folded away. */
  static String folded(int forks) {
    return forks == 0 ? "more" : forks + " more";
  }

  /** One way a step can turn out, as a line. */
  static String branch(Branch branch) {
    String found =
        Sentences.capital(branch.finding().words()) + ", " + PerCent.words(branch.chance()) + ": ";
    return found
        + (branch.end() == End.FORK
            ? branch.then().map(ForkWords::leadsTo).orElse("")
            : branch.end() == End.MENDED ? "the fault is mended." : "too seldom to be drawn.");
  }

  private static String leadsTo(Fork fork) {
    return fork.step().text()
        + " ("
        + fork.step().kind()
        + ", about "
        + Minutes.words(fork.expectedMinutes())
        + " from there)";
  }

  /** Everything about a fork for somebody who listens. */
  static String spoken(TreeWalk walk, Fork fork) {
    StringBuilder all = new StringBuilder();
    if (walk.isHere(fork)) {
      all.append("You are here. ");
    }
    all.append(kind(fork)).append(": ").append(fork.step().text());
    all.append(endsSentence(fork.step().text()) ? " " : ". ");
    all.append(Sentences.capital(minutes(fork))).append(". ");
    all.append("Reached in ").append(PerCent.words(fork.chance())).append(" of cases. ");
    if (walk.canFold(fork)) {
      all.append(walk.isOpen(fork) ? "Unfolded" : "Folded");
      all.append(", ").append(walk.behind(fork)).append(" steps behind it.");
    } else {
      all.append("Nothing behind it.");
    }
    return all.toString();
  }

  private static boolean endsSentence(String text) {
    return text.endsWith("?") || text.endsWith(".");
  }
}
