package limberboard.library.check;

import java.util.List;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Kind;
import limberboard.library.page.ToolUse;
import limberboard.library.problem.Report;
import limberboard.library.value.Interval;

/** Checks what procedures and checks have in common: tools, access, cautions. */
final class WorkCheck {
  private final KnownNames names;
  private final Report report;

  WorkCheck(KnownNames names, Report report) {
    this.names = names;
    this.report = report;
  }

  void tools(List<ToolUse> tools, String pointer) {
    for (int i = 0; i < tools.size(); i++) {
      String at = pointer + "/" + i;
      String id = tools.get(i).use();
      names.page(Kind.MATERIAL, id, at, report);
      if (!names.mayBeTool(id)) {
        report.error(at, "\"" + id + "\" is no tool", "list it under materials");
      }
      names.condition(tools.get(i).fits(), at + "/fits", report);
    }
  }

  void access(List<String> access, String pointer) {
    names.access(access, pointer, report);
  }

  void cautions(List<CautionUse> cautions, String pointer) {
    new CautionUseCheck(names, report).work(cautions, pointer);
  }

  void minutes(double minutes, String pointer) {
    if (!(minutes > 0 && minutes <= 10_000)) {
      report.error(pointer, "is not within 1 to 10000", "write how many minutes it takes");
    }
  }

  void factors(List<Interval.Factor> factors, String pointer) {
    for (int i = 0; i < factors.size(); i++) {
      String at = pointer + "/" + i;
      names.condition(factors.get(i).when(), at + "/when", report);
      if (!(factors.get(i).times() > 0)) {
        report.error(at + "/times", "is not greater than 0", "write a factor such as 0.5 or 2");
      }
    }
  }
}
