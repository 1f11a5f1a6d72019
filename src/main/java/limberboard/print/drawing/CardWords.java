package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Caution;
import limberboard.print.cut.Cautions;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.trace.RankedCause;
import limberboard.trace.TreeCut;
import limberboard.words.Minutes;
import limberboard.words.PerCent;

/** What a card says. Immutable. */
final class CardWords {
  private static final String NO_BREAK = "\u00a0";
  private static final String ARROW = "→" + NO_BREAK;
  private static final String HOW =
      "Begin at the first number. Do what it says, find your answer, and go on at the number after"
          + " its arrow. A number in brackets is not on this card: go on there in the whole tree."
          + " “Can't tell” is an answer too; do not guess. The figure beside an answer is its"
          + " chance, by estimate.";

  private final TreeCut cut;
  private final TreeWords words;

  CardWords(TreeCut cut) {
    this.cut = cut;
    this.words = new TreeWords(cut);
  }

  String title() {
    return cut.tree().from().fault().page().title();
  }

  String share() {
    return "This card covers "
        + PerCent.words(cut.share())
        + " of what happens, by estimate: so often going by it ends at a mend or at handing over"
        + " that it shows; the whole tree "
        + PerCent.words(cut.whole().share())
        + ".";
  }

  static String how() {
    return HOW;
  }

  /** Where to go on, wherever the card does not. */
  String rest() {
    return "For the rest, and for how each check is made: trace it in the program, or go on in the"
        + " whole tree, printed from the window or by “"
        + TreeOrder.asCommand(cut.tree())
        + "”; its numbers are those of this card. What was done since, and the day, may change"
        + " them. Every caution has a page with its whole text.";
  }

  /** A caution in full; the question first that says whether it is an emergency. */
  static List<String> inFull(WorkCaution caution) {
    Caution details = caution.page().details();
    List<String> lines = new ArrayList<>();
    lines.add(
        caution.question().map(asked -> asked + " If so: ").orElse("")
            + "Caution: "
            + caution.title()
            + (caution.because().isEmpty() ? "" : " (" + caution.because() + ")"));
    lines.add(details.danger());
    details.act().forEach(act -> lines.add("– " + act));
    if (!details.seek().isEmpty()) {
      lines.add(details.seek());
    }
    return lines;
  }

  /** A caution in short. */
  static String inShort(WorkCaution caution) {
    return caution.danger() + " " + caution.rule();
  }

  /** What is done at a step. */
  static String step(Fork fork) {
    return fork.number() + " · " + TreeWords.what(fork.step());
  }

  /** Time, what to open, who, what makes it safe, the mend's page: one line each. */
  List<String> facts(Fork fork) {
    NextStep step = fork.step();
    List<String> facts = new ArrayList<>();
    if (step instanceof MakeSafe) {
      facts.add("As number " + words.from(fork).orElse(fork.number()) + " says.");
      return facts;
    }
    facts.addAll(TreeWords.ownFacts(fork));
    if (step instanceof DoMend) {
      facts.add("Page: " + step.id());
    }
    if (step instanceof DoCheck) {
      step.safety().ifPresent(safe -> facts.add("If it is not so, or you can't tell: " + safe));
    }
    return facts;
  }

  static Optional<String> cautions(Fork fork) {
    return Cautions.titles(fork.step().cautions()).map(titles -> "Caution: " + titles);
  }

  /** How a step can turn out, and where each way goes on. */
  List<String> ways(Fork fork) {
    return fork.branches().stream()
        .map(
            branch ->
                branch.finding().words()
                    + NO_BREAK
                    + PerCent.words(branch.chance()).replace(" ", NO_BREAK)
                    + NO_BREAK
                    + then(branch))
        .toList();
  }

  private String then(Branch branch) {
    if (branch.end() == End.MENDED) {
      return ARROW + "done";
    }
    if (branch.end() == End.TOO_RARE) {
      return ARROW + "seldom: ask the program";
    }
    Fork then = branch.then().orElseThrow();
    if (!cut.keeps(then)) {
      return ARROW + "(" + then.number() + ")";
    }
    return then.step() instanceof CallYard ? ARROW + yard(then) : ARROW + then.number();
  }

  private static String yard(Fork yard) {
    return "hand it to the yard, "
        + Minutes.words(yard.step().minutes())
        + yard.at().ranking().stream()
            .findFirst()
            .map(RankedCause::cause)
            .map(cause -> "; likeliest “" + cause.title() + "”")
            .orElse("");
  }

  /** The forks that stand on the card by themselves; the yard stands at the answer before it. */
  List<Fork> shown() {
    return cut.forks().stream()
        .filter(fork -> !(fork.step() instanceof CallYard) || fork == cut.tree().root())
        .toList();
  }

  /** What was found before the tree begins. */
  List<String> found() {
    return cut.tree().from().trail().stream()
        .map(entry -> entry.text() + " " + entry.answer())
        .toList();
  }

  /** The whole in words, by the titles of its parts. */
  String alt() {
    return shown().stream().map(CardWords::step).collect(Collectors.joining("; "));
  }
}
