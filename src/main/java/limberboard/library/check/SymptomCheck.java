package limberboard.library.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import limberboard.library.header.Ids;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.Likelihood;

/** Checks symptom pages: causes, checks and what the checks say about the causes. */
final class SymptomCheck implements PageCheck<Symptom> {
  private static final int MOST_ANSWERS = 6;
  private static final double SLACK = 1e-9;

  @Override
  public void check(Page<Symptom> page, KnownNames names, Report report) {
    Symptom symptom = page.details();
    if (page.head().zones().isEmpty()) {
      report.error("/zones", "is missing", "say where on the boat it is noticed");
    }
    new CautionUseCheck(names, report).first(symptom.first(), "/first");
    if (symptom.causes().isEmpty()) {
      report.error("/causes", "is empty", "write at least one cause");
    }
    if (!(symptom.somethingElse().orElse(1) > 0)) {
      report.error("/something-else", "is not greater than 0", "write a weight such as 1");
    }
    Set<String> causes = causes(symptom, names, report);
    Set<String> reached = new HashSet<>();
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < symptom.checks().size(); i++) {
      Check check = symptom.checks().get(i);
      String pointer = "/checks/" + i;
      id(check.id(), ids, pointer, report);
      check(check, pointer, names, report);
      check.finds().values().forEach(row -> reached.addAll(row.keySet()));
      new FindsCheck(check, causes, pointer, report).run();
    }
    unreached(symptom, reached, report);
  }

  private static Set<String> causes(Symptom symptom, KnownNames names, Report report) {
    Set<String> ids = new TreeSet<>();
    WorkCheck work = new WorkCheck(names, report);
    for (int i = 0; i < symptom.causes().size(); i++) {
      Cause cause = symptom.causes().get(i);
      String pointer = "/causes/" + i;
      id(cause.id(), ids, pointer, report);
      if (cause.id().equals(Symptom.SOMETHING_ELSE) || cause.id().equals(Check.OTHERS)) {
        report.error(pointer + "/id", "\"" + cause.id() + "\" is reserved", "choose another id");
      }
      if (!(cause.weight() > 0)) {
        report.error(pointer + "/weight", "is not greater than 0", "write a weight such as 3");
      }
      names.page(Kind.PROCEDURE, cause.mend(), pointer + "/mend", report);
      names.condition(cause.fits(), pointer + "/fits", report);
      work.factors(cause.moreLikely(), pointer + "/more-likely");
    }
    return ids;
  }

  private static void id(String id, Set<String> seen, String pointer, Report report) {
    if (!Ids.isId(id)) {
      report.error(
          pointer + "/id", "\"" + id + "\" is no id", "use lower-case letters, digits and hyphens");
    }
    if (!seen.add(id)) {
      report.error(pointer + "/id", "\"" + id + "\" stands twice", "give each its own id");
    }
  }

  private static void check(Check check, String pointer, KnownNames names, Report report) {
    WorkCheck work = new WorkCheck(names, report);
    work.minutes(check.minutes(), pointer + "/minutes");
    work.access(check.access(), pointer + "/access");
    work.tools(check.tools(), pointer + "/tools");
    work.cautions(check.cautions(), pointer + "/cautions");
    names.condition(check.fits(), pointer + "/fits", report);
    new SafetyCheck(check, pointer, report).run();
    List<String> answers = check.answers();
    if (answers.size() < 2 || answers.size() > MOST_ANSWERS) {
      report.error(pointer + "/answers", "has " + answers.size() + " answers", "give two to six");
    }
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < answers.size(); i++) {
      if (!Ids.isId(answers.get(i))) {
        report.error(
            pointer + "/answers/" + i,
            "\"" + answers.get(i) + "\" is no answer",
            "write lower-case words with hyphens");
      } else if (!seen.add(answers.get(i))) {
        report.error(pointer + "/answers/" + i, "stands twice", "keep one of the two");
      }
    }
  }

  private static void unreached(Symptom symptom, Set<String> reached, Report report) {
    if (reached.contains(Check.OTHERS)) {
      return;
    }
    for (int i = 0; i < symptom.causes().size(); i++) {
      String id = symptom.causes().get(i).id();
      if (!reached.contains(id)) {
        report.error(
            "/causes/" + i,
            "no check can reach the cause \"" + id + "\"",
            "name it in the finds of a check");
      }
    }
  }

  /** Checks that a check's finds name its answers and the symptom's causes. */
  private record FindsCheck(Check check, Set<String> causes, String pointer, Report report) {
    void run() {
      check
          .finds()
          .forEach(
              (answer, row) -> {
                String at = pointer + "/finds/" + answer;
                answer(answer, at);
                row.keySet().forEach(cause -> cause(cause, at + "/" + cause));
              });
      check.saidAs().keySet().forEach(answer -> answer(answer, pointer + "/said-as/" + answer));
      causes.forEach(this::sum);
    }

    private void answer(String answer, String at) {
      if (!check.answers().contains(answer)) {
        report.error(
            at,
            "is not one of the answers",
            Nearest.advice(answer, check.answers(), "name one of the check's answers"));
      }
    }

    private void cause(String cause, String at) {
      if (!cause.equals(Check.OTHERS) && !causes.contains(cause)) {
        report.error(
            at,
            "there is no cause \"" + cause + "\" on this page",
            Nearest.advice(cause, causes, "name one of the causes, or others"));
      }
    }

    /** Numbers are meant exactly, so they must not come to more than 1. */
    private void sum(String cause) {
      double sum = 0;
      for (var row : check.finds().values()) {
        Likelihood likelihood = row.get(cause);
        if (likelihood != null && Likelihood.scale().containsKey(likelihood.text())) {
          return;
        }
        sum += likelihood == null ? 0 : likelihood.value();
      }
      if (sum > 1 + SLACK) {
        report.error(
            pointer + "/finds",
            "the numbers for \"" + cause + "\" come to more than 1",
            "an owner gives one answer, so they come to 1 at most");
      }
    }
  }
}
