package limberboard.search;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Problem;

/**
 * Reads trade spellings: {@code right: wrong, wrong …}.
 *
 * @param file the file's name, for problems
 */
record SpellingLines(String file) {
  private static final String RIGHT = "the right word, a colon, and how people write it";

  /**
   * How people write it to what is meant; lines that cannot be used are reported and passed over.
   */
  Map<String, String> parse(List<String> lines, List<Problem> problems) {
    Map<String, String> spellings = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String content = WordLine.content(lines.get(i));
      if (!content.isEmpty()) {
        Optional<String> fault = line(content, spellings);
        if (fault.isPresent()) {
          problems.add(Problem.error(file, i + 1, "", fault.get(), RIGHT));
        }
      }
    }
    return spellings;
  }

  private static Optional<String> line(String content, Map<String, String> spellings) {
    int colon = content.indexOf(':');
    if (colon < 0) {
      return Optional.of("there is no colon");
    }
    String right = WordLine.phrase(content.substring(0, colon));
    if (right.isEmpty()) {
      return Optional.of("there is no word before the colon");
    }
    Optional<String> ofRight = WordLine.fault(right);
    if (ofRight.isPresent()) {
      return ofRight;
    }
    if (right.contains(",")) {
      return Optional.of("\"" + right + "\" is more than one word or phrase");
    }
    Map<String, String> ofLine = new LinkedHashMap<>();
    List<String> spelt = WordLine.phrases(content.substring(colon + 1));
    if (spelt.size() > Limits.LINE_PHRASES) {
      return Optional.of(WordLine.tooMany(spelt.size()));
    }
    for (String wrong : spelt) {
      Optional<String> fault = fault(right, wrong, spellings);
      if (fault.isPresent()) {
        return fault;
      }
      ofLine.put(wrong, right);
    }
    spellings.putAll(ofLine);
    return Optional.empty();
  }

  private static Optional<String> fault(String right, String wrong, Map<String, String> spellings) {
    if (wrong.isEmpty()) {
      return Optional.of("\"" + right + "\" has an empty spelling");
    }
    if (wrong.contains(":")) {
      return Optional.of("there is a second colon");
    }
    if (wrong.equals(right)) {
      return Optional.of("\"" + wrong + "\" is given as a wrong spelling of itself");
    }
    String other = spellings.getOrDefault(wrong, right);
    if (!other.equals(right)) {
      return Optional.of("\"" + wrong + "\" is already a spelling of \"" + other + "\"");
    }
    return WordLine.fault(wrong);
  }
}
