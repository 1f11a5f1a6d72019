package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Skill;
import limberboard.print.page.Block;
import limberboard.trace.DiagnosticTree.Branch;
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
import limberboard.words.SkillWords;

/** A diagnostic tree in words, whole or cut, the same in every output. Immutable. */
final class TreeWords {
  private static final int NAMED_TO_YARD = 2;
  private static final double WORTH_NAMING = 0.05;

  private final TreeCut cut;
  private final Map<Integer, Integer> from = new HashMap<>();

  TreeWords(TreeCut cut) {
    this.cut = cut;
    for (Fork fork : cut.tree().forks()) {
      for (Branch branch : fork.branches()) {
        branch.then().ifPresent(then -> from.put(then.number(), fork.number()));
      }
    }
  }

  /** The number of the fork that leads to this one. */
  Optional<Integer> from(Fork fork) {
    return Optional.ofNullable(from.get(fork.number()));
  }

  /** What kind of step it is, in a word or two. */
  static String kind(NextStep step) {
    if (step instanceof DoMend) {
      return "Mend";
    }
    if (step instanceof MakeSafe) {
      return "Make it safe";
    }
    return step instanceof CallYard ? "The yard" : "Check";
  }

  /** What is done: the question, the mend's title, or handing over. */
  static String what(NextStep step) {
    return step instanceof CallYard
        ? "Hand it to the yard, with what was found"
        : step instanceof DoMend ? "Mend: " + step.text() : step.text();
  }

  /** Time, what to open, who may do it, what stands to be expected: one line each. */
  static List<String> facts(Fork fork) {
    return facts(fork, "; from here " + Minutes.words(fork.expectedMinutes()));
  }

  /** The same without what stands to be expected from there on. */
  static List<String> ownFacts(Fork fork) {
    return facts(fork, "");
  }

  private static List<String> facts(Fork fork, String fromHere) {
    NextStep step = fork.step();
    if (step instanceof CallYard) {
      return List.of("Costs you " + Minutes.words(step.minutes()) + ". " + likeliest(fork));
    }
    if (step instanceof MakeSafe safe) {
      return List.of(safe.how());
    }
    List<String> facts = new ArrayList<>();
    if (step instanceof DoCheck check && check.check().check().comesFirst()) {
      facts.add("Comes first for safety: nothing else before it is safe");
    }
    facts.add("Takes " + Minutes.words(step.minutes()) + fromHere);
    if (!step.toOpen().isEmpty()) {
      facts.add(
          "First: "
              + step.toOpen().stream().map(Access::title).collect(Collectors.joining("; then ")));
    }
    Skill skill = skill(step);
    if (step instanceof DoMend || skill != Skill.OWNER) {
      facts.add("Who: " + SkillWords.of(skill));
    }
    return facts;
  }

  private static Skill skill(NextStep step) {
    if (step instanceof DoMend mend) {
      return mend.cause().mendSkill();
    }
    return step instanceof DoCheck check ? check.check().check().skill() : Skill.YARD;
  }

  /** The likeliest causes for the yard to begin with, and whose work the first one's mend is. */
  private static String likeliest(Fork fork) {
    List<RankedCause> named = named(fork);
    if (named.isEmpty()) {
      return "";
    }
    boolean licensed = named.get(0).cause().mendSkill() == Skill.LICENSED;
    return "Likeliest: "
        + causes(named)
        + "."
        + (licensed ? " Only a person licensed for it may mend the first." : "");
  }

  private static List<RankedCause> named(Fork fork) {
    return fork.at().ranking().stream()
        .limit(NAMED_TO_YARD)
        .filter(ranked -> ranked.chance() >= WORTH_NAMING)
        .toList();
  }

  private static String causes(List<RankedCause> named) {
    return named.stream()
        .map(ranked -> ranked.cause().title() + " (" + PerCent.words(ranked.chance()) + ")")
        .collect(Collectors.joining("; "));
  }

  /** Whether a branch leads to a fork that the cut leaves out. */
  boolean isCutOff(Branch branch) {
    return branch.then().filter(then -> !cut.keeps(then)).isPresent();
  }

  /** Where to go on behind the last fork that a cut keeps: what comes next, and what it may be. */
  static String goesOn(Fork then) {
    List<RankedCause> named = named(then);
    String next =
        then.step() instanceof CallYard
            ? "goes on at " + then.number() + ", the yard"
            : "goes on at " + then.number() + ", “" + what(then.step()) + "”";
    return named.isEmpty() ? next : next + "; likeliest: " + causes(named);
  }

  /** How the step can turn out and where to go on. */
  List<Block.Way> ways(Fork fork) {
    return fork.branches().stream()
        .map(
            branch ->
                new Block.Way(
                    branch.finding().words(), PerCent.words(branch.chance()), then(branch)))
        .toList();
  }

  private String then(Branch branch) {
    return switch (branch.end()) {
      case MENDED -> "done";
      case TOO_RARE -> "seldom: " + likeliest(branch);
      case FORK ->
          branch.then().map(isCutOff(branch) ? TreeWords::goesOn : TreeWords::goOn).orElse("");
    };
  }

  /** The likeliest cause behind a branch that is not drawn. */
  static String likeliest(Branch branch) {
    return branch
        .leading()
        .map(
            leading ->
                "likeliest “%s” (%s)"
                    .formatted(leading.cause().title(), PerCent.words(leading.chance())))
        .orElse("ask the program");
  }

  private static String goOn(Fork then) {
    String number = "→ " + then.number();
    if (then.step() instanceof DoMend) {
      return number + ", a mend";
    }
    return then.step() instanceof CallYard ? number + ", the yard" : number;
  }
}
