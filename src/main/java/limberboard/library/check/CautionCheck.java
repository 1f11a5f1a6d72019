package limberboard.library.check;

import java.util.List;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.library.problem.Report;

/** Checks caution pages: they must say what to do, and say it in two lines as well. */
final class CautionCheck implements PageCheck<Caution> {
  @Override
  public void check(Page<Caution> page, KnownNames names, Report report) {
    Caution caution = page.details();
    if (caution.act().isEmpty()) {
      report.error("/do", "is empty", "say what to do about the danger");
    }
    conditions(caution.lines(), "/do", names, report);
    for (int i = 0; i < caution.bites().size(); i++) {
      if (caution.bites().get(i).isBlank()) {
        report.error("/bites/" + i, "is empty", "write a word of the steps at which it bites");
      }
    }
    caution
        .brief()
        .ifPresentOrElse(
            two -> brief(two, names, report),
            () ->
                report.warning(
                    "/short",
                    "is missing",
                    "write {danger: …, rule: …} in two lines; until then the danger's first"
                        + " sentence and the first line to do stand for them"));
  }

  private static void brief(Caution.Brief two, KnownNames names, Report report) {
    conditions(two.danger(), "/short/danger", names, report);
    conditions(two.rule(), "/short/rule", names, report);
    if (two.danger().isEmpty() || two.rule().isEmpty()) {
      report.error("/short", "says nothing", "write the danger and the one rule that matters");
    }
    int characters = longest(two.danger()) + longest(two.rule());
    if (characters > Caution.BRIEF_CHARACTERS) {
      report.error(
          "/short",
          "has " + characters + " characters, more than two lines",
          "keep danger and rule within " + Caution.BRIEF_CHARACTERS + " together");
    }
  }

  private static int longest(List<Caution.Line> lines) {
    return lines.stream().mapToInt(line -> line.say().length()).max().orElse(0);
  }

  private static void conditions(
      List<Caution.Line> lines, String pointer, KnownNames names, Report report) {
    for (int i = 0; i < lines.size(); i++) {
      names.condition(lines.get(i).fits(), pointer + "/" + i + "/fits", report);
    }
  }
}
