package limberboard.findings;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.header.NestedYaml;
import limberboard.library.header.YamlScalar;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.header.YamlTree;
import limberboard.library.problem.Problem;
import limberboard.proofread.rule.HeaderMend;
import limberboard.proofread.rule.PageRemark;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;

/**
 * A change of one entry in a list of a page's header. Immutable.
 *
 * @param file the page's file, relative to the workspace
 * @param mend what is changed
 */
public record HeaderRepair(String file, HeaderMend mend) implements FileRepair {
  /**
   * Answers what a proofreader has found, instead of mending it.
   *
   * @param why why it is right as it stands
   */
  public static HeaderRepair answering(PageRemark remark, String why) {
    return new HeaderRepair(
        remark.file(), new HeaderMend.Answers(remark.rule(), remark.about(), why));
  }

  /** The repair of what a proofreader has found; empty where none is certain. */
  public static Optional<HeaderRepair> of(PageRemark remark) {
    return remark.mend().map(step -> new HeaderRepair(remark.file(), step));
  }

  private List<String> path() {
    return Arrays.asList(mend.list().substring(1).split("/"));
  }

  private String listName() {
    List<String> path = path();
    return path.get(path.size() - 1);
  }

  @Override
  public String words() {
    return deed() + " in the header of " + file + ".";
  }

  @Override
  public String deed() {
    if (mend instanceof HeaderMend.Adds adds) {
      return "Adds " + adds.id() + " to " + listName();
    }
    return mend instanceof HeaderMend.Answers answers
        ? "Answers “" + answers.rule() + "”"
        : "Takes the answer out";
  }

  @Override
  public Problem gone() {
    return Problem.error(
        file,
        0,
        listName(),
        "cannot be changed without touching something else",
        "change it in the page's text");
  }

  @Override
  public Optional<String> in(String text) {
    PageText page = new PageText(text);
    Optional<Stretch> header = page.header();
    if (header.isEmpty()) {
      return Optional.empty();
    }
    String before = header.get().of(text);
    try {
      String after = changed(before);
      JsonNode meant = YamlTree.read(file, before, 1).root().deepCopy();
      YamlTree read = YamlTree.read(file, after, 1);
      boolean right = isMade(meant, read.root()) && read.report().isEmpty();
      return right ? Optional.of(page.withHeader(after).text()) : Optional.empty();
    } catch (Unchangeable e) {
      return Optional.empty();
    }
  }

  private String changed(String header) throws Unchangeable {
    NestedYaml yaml = new NestedYaml(header);
    if (mend instanceof HeaderMend.Adds adds) {
      if (has(YamlTree.read(file, header, 1).root().at(mend.list()), adds.id())) {
        throw new Unchangeable("it is there already");
      }
      return yaml.withWord(path(), YamlScalar.value(adds.id()));
    }
    if (mend instanceof HeaderMend.Answers answers) {
      Map<String, String> entry = new LinkedHashMap<>();
      entry.put("rule", YamlScalar.value(answers.rule()));
      entry.put("about", YamlScalar.value(answers.about()));
      entry.put("why", YamlScalar.value(answers.why()));
      return yaml.withEntry(path(), entry);
    }
    int at = ((HeaderMend.TakesOut) mend).at();
    boolean only = YamlTree.read(file, header, 1).root().at(mend.list()).size() == 1;
    return only ? yaml.without(path()) : yaml.withoutEntry(path(), at);
  }

  private static boolean has(JsonNode list, String id) {
    for (JsonNode each : list) {
      if (each.asText().equals(id) || each.path("use").asText().equals(id)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the header says what it said, and has this change and no other. */
  private boolean isMade(JsonNode before, JsonNode after) {
    JsonNode was = before.at(mend.list());
    JsonNode is = after.at(mend.list());
    int size = is.size() - was.size();
    boolean counted =
        mend instanceof HeaderMend.Adds adds
            ? size == 1 && is.get(is.size() - 1).asText().equals(adds.id())
            : size == (mend instanceof HeaderMend.Answers ? 1 : -1);
    return counted && without(before).equals(without(after));
  }

  /** All that a header says besides the list. */
  private JsonNode without(JsonNode header) {
    JsonNode rest = header.deepCopy();
    List<String> path = path();
    String above = mend.list().substring(0, mend.list().lastIndexOf('/'));
    if (rest.at(above) instanceof ObjectNode around) {
      around.remove(path.get(path.size() - 1));
    }
    return rest;
  }
}
