package limberboard.desktop.write.state;

import limberboard.library.problem.Problem;
import limberboard.words.Sentences;

/** What is wrong, as a sentence for whoever sits in front of the window. */
final class Troubles {
  private Troubles() {}

  static String of(Problem problem) {
    String line = problem.line() > 0 ? ", line " + problem.line() : "";
    String right = problem.right().isEmpty() ? "" : " " + Sentences.capital(problem.right()) + ".";
    return problem.file() + line + " " + problem.wrong() + "." + right;
  }
}
