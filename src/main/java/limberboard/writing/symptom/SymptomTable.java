package limberboard.writing.symptom;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import limberboard.library.header.YamlTree;
import limberboard.library.page.Check;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Problem;
import limberboard.writing.PageText;

/**
 * A symptom's causes and checks as a table, read from a page's text whether it is finished or not.
 * {@link SymptomEdits} changes it. Immutable.
 */
public final class SymptomTable implements SymptomRead {
  private final PageText page;
  private final YamlTree tree;
  private final List<TableCause> causes;
  private final List<TableCheck> checks;

  private SymptomTable(PageText page, YamlTree tree) {
    this.page = page;
    this.tree = tree;
    this.causes = causes(tree.root().path("causes"));
    this.checks = checks(tree.root().path("checks"));
  }

  /** Reads a page's text. */
  public static SymptomRead read(PageText page) {
    Optional<String> header = page.header().map(at -> at.of(page.text()));
    if (header.isEmpty()) {
      return new Unreadable(
          "The page has no header.", "Begin and end it with a line of three hyphens: ---");
    }
    YamlTree tree = YamlTree.read("", header.get(), 2);
    List<Problem> problems = tree.report().problems();
    if (!problems.isEmpty()) {
      Problem first = problems.get(0);
      String key = first.key().isEmpty() ? "" : first.key() + " ";
      return new Unreadable(
          "Line " + first.line() + ": " + key + first.wrong() + ".", first.right() + ".");
    }
    for (String key : List.of("causes", "checks")) {
      JsonNode list = tree.root().path(key);
      if (!list.isMissingNode() && !isOfMappings(list)) {
        return new Unreadable(
            "In the header, " + key + " is no list of entries with keys.",
            "Write each entry on lines of its own, the first after a hyphen: - id: …");
      }
    }
    return new SymptomTable(page, tree);
  }

  private static boolean isOfMappings(JsonNode list) {
    boolean all = list.isArray();
    for (JsonNode each : list) {
      all &= each.isObject();
    }
    return all;
  }

  private static String text(JsonNode node, String key) {
    return node.path(key).asText("");
  }

  private static List<TableCause> causes(JsonNode list) {
    List<TableCause> causes = new ArrayList<>();
    for (JsonNode each : list) {
      causes.add(
          new TableCause(
              causes.size(),
              text(each, "id"),
              text(each, "title"),
              text(each, "weight"),
              text(each, "mend")));
    }
    return causes;
  }

  private static List<TableCheck> checks(JsonNode list) {
    List<TableCheck> checks = new ArrayList<>();
    for (JsonNode each : list) {
      Map<String, Map<String, String>> finds = new LinkedHashMap<>();
      each.path("finds")
          .properties()
          .forEach(row -> finds.put(row.getKey(), texts(row.getValue())));
      List<String> answers = new ArrayList<>();
      JsonNode said = each.path("answers");
      if (said.isTextual()) {
        answers.add(said.asText());
      }
      said.forEach(answer -> answers.add(answer.asText("")));
      checks.add(
          new TableCheck(
              checks.size(),
              text(each, "id"),
              text(each, "ask"),
              text(each, "how"),
              text(each, "minutes"),
              answers,
              finds));
    }
    return checks;
  }

  private static Map<String, String> texts(JsonNode row) {
    Map<String, String> texts = new LinkedHashMap<>();
    row.properties().forEach(each -> texts.put(each.getKey(), each.getValue().asText("")));
    return texts;
  }

  /** The page. */
  public PageText page() {
    return page;
  }

  /** The header as a tree of texts; not to be changed. */
  ObjectNode root() {
    return tree.root();
  }

  /** The causes, in the page's order. */
  public List<TableCause> causes() {
    return causes;
  }

  /** The checks, in the page's order. */
  public List<TableCheck> checks() {
    return checks;
  }

  /** What the page is called. */
  public String title() {
    return text(tree.root(), "title");
  }

  /** Where it is noticed, by zone ids. */
  public List<String> zones() {
    JsonNode zones = tree.root().path("zones");
    List<String> all = new ArrayList<>();
    if (zones.isTextual()) {
      all.add(zones.asText());
    }
    zones.forEach(each -> all.add(each.asText("")));
    return all;
  }

  /** Whether it has neither causes nor checks yet. */
  public boolean isEmpty() {
    return causes.isEmpty() && checks.isEmpty();
  }

  /** The share of all weights that a cause has, 0 to 1; 0 where it has none. */
  public double share(TableCause cause) {
    double all = causes.stream().mapToDouble(each -> each.weighs().orElse(0)).sum();
    return all > 0 ? cause.weighs().orElse(0) / all : 0;
  }

  /** Ids that no new cause may have. */
  Set<String> takenByCauses() {
    Set<String> taken = new TreeSet<>(List.of(Symptom.SOMETHING_ELSE, Check.OTHERS));
    causes.forEach(cause -> taken.add(cause.id()));
    return taken;
  }

  /** Ids that no new check may have. */
  Set<String> takenByChecks() {
    Set<String> taken = new TreeSet<>();
    checks.forEach(check -> taken.add(check.id()));
    return taken;
  }
}
