package limberboard.library.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import limberboard.library.body.BodyScan;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;

/** Checks what every page has. */
final class HeadCheck {
  /** Reports what is wrong with a page's head, and with what its header says of its headings. */
  void check(Page<?> page, List<BodyScan.Spot> headings, KnownNames names, Report report) {
    if (page.title().isBlank()) {
      report.error("/title", "is empty", "write what the page is about");
    }
    if (page.title().length() > Limits.TITLE_CHARACTERS) {
      report.error(
          "/title",
          "is " + page.title().length() + " characters long",
          "keep it under " + Limits.TITLE_CHARACTERS);
    }
    if (page.kind() != Kind.MODEL) {
      names.zones(page.head().zones(), "/zones", report);
    }
    names.condition(page.head().fits(), "/fits", report);
    Set<String> texts = new HashSet<>();
    headings.forEach(heading -> texts.add(heading.text()));
    page.head()
        .onlyFor()
        .forEach(
            (heading, condition) -> {
              String pointer = Report.pointer("/only-for", heading);
              heading(heading, texts, pointer, report);
              names.condition(condition, pointer, report);
            });
    if (page.details() instanceof Procedure procedure) {
      for (int i = 0; i < procedure.ownerParts().size(); i++) {
        heading(procedure.ownerParts().get(i), texts, "/owner-parts/" + i, report);
      }
    }
  }

  private static void heading(String heading, Set<String> known, String pointer, Report report) {
    if (!known.contains(heading)) {
      report.error(
          pointer,
          "is no heading of this page",
          Nearest.advice(heading, known, "write the heading exactly as in the body"));
    }
  }
}
