package limberboard.writing.start;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.library.header.YamlScalar;
import limberboard.library.problem.Problem;

/**
 * Causes and checks typed as plain lines, from which a symptom page is begun. {@link OutlineReader}
 * reads it. Immutable.
 *
 * @param causes the causes, in order
 * @param checks the checks, in order
 * @param problems what of it could not be understood, by line; it is left out
 */
public record SymptomOutline(
    List<OutlinedCause> causes, List<OutlinedCheck> checks, List<Problem> problems) {
  /** What stands for a weight that nobody has said: all alike. */
  static final String ALIKE = "1";

  /** Copies the lists. */
  public SymptomOutline {
    causes = List.copyOf(causes);
    checks = List.copyOf(checks);
    problems = List.copyOf(problems);
  }

  /** Whether for some cause nobody has said how common it is. */
  public boolean isUnweighed() {
    return causes.stream().anyMatch(cause -> cause.weight().isEmpty());
  }

  /** The causes as they stand behind their key in a header. */
  public String causesYaml() {
    return causes.isEmpty()
        ? " []"
        : causes.stream().map(SymptomOutline::yaml).collect(Collectors.joining());
  }

  private static String yaml(OutlinedCause cause) {
    return "\n  - id: "
        + YamlScalar.value(cause.id())
        + line("title", cause.title())
        + (cause.about().isEmpty() ? "" : line("about", cause.about()))
        + line("weight", cause.weight().orElse(ALIKE))
        + line("mend", cause.mend().orElse(""));
  }

  private static String line(String key, String value) {
    return "\n    " + key + ":" + (value.isEmpty() ? "" : " " + YamlScalar.value(value));
  }

  /** The checks as they stand behind their key in a header. */
  public String checksYaml() {
    return checks.isEmpty()
        ? " []"
        : checks.stream().map(SymptomOutline::yaml).collect(Collectors.joining());
  }

  private static String yaml(OutlinedCheck check) {
    StringBuilder yaml = new StringBuilder("\n  - id: " + YamlScalar.value(check.id()));
    yaml.append(line("ask", check.ask()));
    yaml.append(line("how", check.how()));
    yaml.append(line("minutes", check.minutes().orElse("")));
    yaml.append("\n    answers: ").append(words(check.answers()));
    if (!check.finds().isEmpty()) {
      yaml.append("\n    finds:");
      check
          .finds()
          .forEach(
              (answer, row) ->
                  yaml.append("\n      ")
                      .append(YamlScalar.word(answer))
                      .append(": ")
                      .append(row(row)));
    }
    return yaml.toString();
  }

  private static String words(List<String> words) {
    return words.stream().map(YamlScalar::word).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String row(Map<String, String> row) {
    return row.entrySet().stream()
        .map(each -> YamlScalar.word(each.getKey()) + ": " + YamlScalar.word(each.getValue()))
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
