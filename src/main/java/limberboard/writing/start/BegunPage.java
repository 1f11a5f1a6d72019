package limberboard.writing.start;

import java.util.List;
import java.util.Map;
import limberboard.library.header.YamlScalar;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldDeclaration;

/**
 * A page that is begun: its header has what such a page must have, with the words there are to
 * choose from beside it, and nothing made up.
 *
 * @param id its id
 * @param kind its kind
 * @param text its text
 */
public record BegunPage(String id, Kind kind, PageText text) {
  /** Keys that need not be there by the record, and without which such a page is of no use. */
  private static final Map<Kind, List<String>> WANTED =
      Map.of(
          Kind.SYMPTOM, List.of("summary", "said-as", "system", "zones"),
          Kind.PROCEDURE, List.of("summary", "system", "zones", "cautions"),
          Kind.MATERIAL, List.of("summary", "unit", "packs"),
          Kind.MODEL, List.of("summary"),
          Kind.CAUTION, List.of("short"),
          Kind.TOPIC, List.of("summary"),
          Kind.WORDING, List.of());

  /** A page without content. */
  public static BegunPage of(Kind kind, String title, String id) {
    return with(kind, title, id, Map.of());
  }

  /** A symptom from an outline. */
  public static BegunPage of(SymptomOutline outline, String title, String id) {
    return with(
        Kind.SYMPTOM,
        title,
        id,
        Map.of("causes", outline.causesYaml(), "checks", outline.checksYaml()));
  }

  /** The path of its file, relative to the workspace. */
  public String path() {
    return "articles/" + kind.folder() + "/" + id + ".md";
  }

  private static BegunPage with(Kind kind, String title, String id, Map<String, String> given) {
    StringBuilder text = new StringBuilder("---\n");
    for (FieldDeclaration field : FieldDeclaration.of(kind)) {
      String key = field.key();
      if (key.equals("title")) {
        text.append("title: ").append(YamlScalar.value(title)).append('\n');
      } else if (given.containsKey(key)) {
        text.append(key).append(':').append(given.get(key)).append('\n');
      } else if (field.required() || WANTED.getOrDefault(kind, List.of()).contains(key)) {
        text.append(key).append(':').append(empty(field)).append('\n');
      }
    }
    String body = kind == Kind.PROCEDURE ? "1. \n" : "";
    return new BegunPage(id, kind, new PageText(text + "---\n\n" + body));
  }

  /** Nothing yet, with the words there are to choose from. */
  private static String empty(FieldDeclaration field) {
    if (field.many()) {
      return " []";
    }
    List<String> words = field.choices();
    return words.isEmpty() ? "" : " # " + String.join(", ", words);
  }
}
