package limberboard.library.check;

import limberboard.library.page.Check;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;

/**
 * Checks that what safety demands first says how it is made safe, and that nothing else does.
 *
 * @param check the check
 * @param pointer where it stands in the header
 * @param report takes what is wrong
 */
record SafetyCheck(Check check, String pointer, Report report) {
  void run() {
    if (check.comesFirst() && check.makeSafe().isEmpty()) {
      report.error(
          pointer,
          "comes first, and does not say how it is made safe",
          "add make-safe: what to do so that it is safe whatever the answer is");
    }
    if (!check.comesFirst() && (check.makeSafe().isPresent() || !check.safeWhen().isEmpty())) {
      report.error(
          pointer,
          "says how it is made safe, and does not come first",
          "add comes-first: true, or take make-safe and safe-when out");
    }
    for (int i = 0; i < check.safeWhen().size(); i++) {
      String answer = check.safeWhen().get(i);
      if (!check.answers().contains(answer)) {
        report.error(
            pointer + "/safe-when/" + i,
            "\"" + answer + "\" is not one of the answers",
            Nearest.advice(answer, check.answers(), "name one of the check's answers"));
      }
    }
    if (check.comesFirst() && check.answers().contains(Check.MADE_SAFE)) {
      report.error(
          pointer + "/answers", "\"" + Check.MADE_SAFE + "\" is reserved", "choose another word");
    }
  }
}
