package limberboard.library.check;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Wording;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Report;
import limberboard.library.value.LetterPart;

/** Checks wordings: what stands in braces must be something that is filled in at their place. */
final class WordingCheck implements PageCheck<Wording> {
  private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)\\}|[{}]");

  @Override
  public void check(Page<Wording> page, KnownNames names, Report report) {
    LetterPart part = page.details().part();
    if (page.body().isBlank()) {
      report.error("/for", "has no words", "write the words below the header");
    }
    if (!part.hasMatters() && !page.details().when().isEmpty()) {
      report.error(
          "/when",
          "does not go with \"for: " + part.word() + "\"",
          "take it out; only urgent and no-fault have words for different matters");
    }
    if (part != LetterPart.URGENT && !page.details().cautions().isEmpty()) {
      report.error(
          "/cautions",
          "does not go with \"for: " + part.word() + "\"",
          "take it out; the cautions of the work stand in every answer by themselves");
    }
    symptoms(page.details(), names, report);
    for (int i = 0; i < page.details().cautions().size(); i++) {
      String id = page.details().cautions().get(i).use();
      names.page(Kind.CAUTION, id, "/cautions/" + i, report);
    }
    String[] lines = page.body().split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      line(lines[i], page.bodyLine() + i, part, report);
    }
  }

  private static void symptoms(Wording wording, KnownNames names, Report report) {
    if (!wording.symptoms().isEmpty()
        && (wording.part() != LetterPart.URGENT || wording.when().isEmpty())) {
      report.error(
          "/symptoms",
          "does not say what is dangerous",
          "put it where \"for: urgent\" and \"when\" stand, or take it out");
    }
    for (int i = 0; i < wording.symptoms().size(); i++) {
      names.page(Kind.SYMPTOM, wording.symptoms().get(i), "/symptoms/" + i, report);
    }
  }

  private static void line(String text, int line, LetterPart part, Report report) {
    List<String> known = part.placeholders();
    String right =
        known.isEmpty()
            ? "nothing is filled in here; write it without braces"
            : "here may stand {" + String.join("}, {", known) + "}";
    for (Matcher braces = BRACES.matcher(text); braces.find(); ) {
      String name = braces.group(1);
      if (name == null) {
        report.errorOnLine(line, braces.group(), "is a brace without its other one", right);
      } else if (!known.contains(name)) {
        report.errorOnLine(
            line, "{" + name + "}", "is not filled in here", Nearest.advice(name, known, right));
      }
    }
  }
}
