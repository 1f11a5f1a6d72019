package limberboard.library.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import limberboard.library.page.Caution;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Kind;
import limberboard.library.problem.Report;
import limberboard.library.value.Amount;
import limberboard.library.value.CountingUnit;

/** Checks the cautions that a page names. */
record CautionUseCheck(KnownNames names, Report report) {

  /** Those of work: neither an amount nor a question says when they hold. */
  void work(List<CautionUse> uses, String pointer) {
    all(uses, pointer);
    for (int i = 0; i < uses.size(); i++) {
      noAmount(uses.get(i), pointer + "/" + i);
      noQuestion(uses.get(i), pointer + "/" + i);
    }
  }

  /** Those of a symptom, before any question. */
  void first(List<CautionUse> uses, String pointer) {
    all(uses, pointer);
    for (int i = 0; i < uses.size(); i++) {
      noAmount(uses.get(i), pointer + "/" + i);
    }
  }

  /** Those of a material that is counted in a unit. */
  void material(List<CautionUse> uses, CountingUnit counted, String pointer) {
    all(uses, pointer);
    for (int i = 0; i < uses.size(); i++) {
      String at = pointer + "/" + i;
      noQuestion(uses.get(i), at);
      uses.get(i).from().ifPresent(from -> amount(from, counted, at + "/from"));
    }
  }

  /** Those of a tool, of which there is no amount. */
  void tool(List<CautionUse> uses, String pointer) {
    work(uses, pointer);
  }

  private void amount(Amount.Fixed from, CountingUnit counted, String at) {
    if (!counted.measures(from.quantity().getUnit())) {
      report.error(
          at, "is not counted in " + counted.word(), "write the amount in " + counted.word());
    } else if (!(from.quantity().getValue().doubleValue() > 0)) {
      report.error(at, "is not greater than 0", "leave it out: the caution then always holds");
    }
  }

  private void all(List<CautionUse> uses, String pointer) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < uses.size(); i++) {
      String at = pointer + "/" + i;
      CautionUse use = uses.get(i);
      names.page(Kind.CAUTION, use.use(), at, report);
      names.condition(use.fits(), at + "/fits", report);
      if (use.fits().isEmpty() && !seen.add(use.use())) {
        report.error(at, "\"" + use.use() + "\" stands twice", "keep one of the two");
      }
      if (use.rule().length() > Caution.BRIEF_CHARACTERS) {
        report.error(
            at + "/rule",
            "has " + use.rule().length() + " characters",
            "keep it within " + Caution.BRIEF_CHARACTERS);
      }
      for (int k = 0; k < use.at().size(); k++) {
        if (use.at().get(k).isBlank()) {
          report.error(at + "/at/" + k, "is empty", "write a word of the step at which it bites");
        }
      }
    }
  }

  private void noAmount(CautionUse use, String at) {
    if (use.from().isPresent()) {
      report.error(at + "/from", "is only for materials", "take it out, or write it there");
    }
  }

  private void noQuestion(CautionUse use, String at) {
    if (!use.question().isEmpty()) {
      report.error(at + "/if", "is only for what a symptom names first", "take it out");
    }
  }
}
