package limberboard.writing.symptom;

import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldValue;
import limberboard.writing.form.HeaderForm;
import limberboard.writing.start.OutlineReader;
import limberboard.writing.start.SymptomOutline;

/**
 * An outline of causes and checks that is being typed. It stands in the page's body until its table
 * is made, so that it is kept and saved like any other text.
 *
 * @param page the page, without causes and checks
 */
public record OutlinedPage(PageText page) {
  private static final String LINES = "the outline";

  /** What is typed so far. */
  public String lines() {
    return page.body().of(page.text()).replace("\r\n", "\n").strip();
  }

  /** What the lines say. */
  public SymptomOutline outline() {
    return OutlineReader.read(LINES, lines());
  }

  /** Whether a page's body is an outline: it names causes or checks in the way of outlines. */
  public static boolean isOutline(PageText page) {
    OutlinedPage outlined = new OutlinedPage(page);
    return outlined
        .lines()
        .lines()
        .anyMatch(line -> line.strip().matches("(?i)#*\\s*(causes|checks):?"));
  }

  /** The page with other lines. */
  public PageText typed(String lines) {
    String end = page.lineEnd();
    return page.withBody(end + lines.stripTrailing().replace("\n", end) + end);
  }

  /**
   * The page with the causes and checks of its lines in its header, and without the lines.
   *
   * @throws Unchangeable when the lines name no cause, or the header cannot take them
   */
  public PageText table() throws Unchangeable {
    SymptomOutline outline = outline();
    if (outline.causes().isEmpty()) {
      throw new Unchangeable("The lines name no cause yet.");
    }
    HeaderForm form =
        HeaderForm.of(Kind.SYMPTOM, page)
            .orElseThrow(() -> new Unchangeable("The page\u2019s header cannot be read."));
    HeaderForm made =
        form.set("causes", nested(outline.causesYaml()))
            .set("checks", nested(outline.checksYaml()));
    return made.page().withBody(page.lineEnd());
  }

  /** Moved to the left margin. */
  private static FieldValue nested(String yaml) {
    return yaml.startsWith("\n")
        ? new FieldValue.Nested(yaml.substring(1).replaceAll("(?m)^  ", ""))
        : new FieldValue.Many(java.util.List.of());
  }
}
