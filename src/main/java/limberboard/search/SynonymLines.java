package limberboard.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Problem;

/**
 * Reads synonyms: one group a line, words or phrases separated by commas.
 *
 * @param file the file's name, for problems
 */
record SynonymLines(String file) {
  private static final String RIGHT =
      "two or more words or phrases separated by commas, each standing for the others";

  /** The groups; lines that are no group are reported and passed over. */
  List<List<String>> parse(List<String> lines, List<Problem> problems) {
    List<List<String>> groups = new ArrayList<>();
    Map<String, Integer> groupsOf = new HashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String content = WordLine.content(lines.get(i));
      if (!content.isEmpty()) {
        List<String> phrases = WordLine.phrases(content);
        Optional<String> fault = fault(phrases).or(() -> tooOften(phrases, groupsOf));
        if (fault.isPresent()) {
          problems.add(Problem.error(file, i + 1, "", fault.get(), RIGHT));
        } else {
          groups.add(phrases);
          phrases.forEach(phrase -> groupsOf.merge(phrase, 1, Integer::sum));
        }
      }
    }
    return groups;
  }

  private static Optional<String> tooOften(List<String> phrases, Map<String, Integer> groupsOf) {
    return phrases.stream()
        .filter(phrase -> groupsOf.getOrDefault(phrase, 0) >= Limits.WORD_GROUPS)
        .findFirst()
        .map(phrase -> "\"" + phrase + "\" stands on more than " + Limits.WORD_GROUPS + " lines");
  }

  private static Optional<String> fault(List<String> phrases) {
    if (phrases.size() > Limits.LINE_PHRASES) {
      return Optional.of(WordLine.tooMany(phrases.size()));
    }
    if (phrases.size() < 2) {
      return Optional.of("\"" + phrases.get(0) + "\" stands alone");
    }
    Optional<String> ofPhrase =
        phrases.stream().map(WordLine::fault).flatMap(Optional::stream).findFirst();
    if (ofPhrase.isPresent()) {
      return ofPhrase;
    }
    HashSet<String> seen = new HashSet<>();
    return phrases.stream()
        .filter(phrase -> !seen.add(phrase))
        .map(phrase -> "\"" + phrase + "\" stands twice in one group")
        .findFirst();
  }
}
