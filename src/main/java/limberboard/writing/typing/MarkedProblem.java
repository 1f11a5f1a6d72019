package limberboard.writing.typing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.header.HeaderSource;
import limberboard.library.problem.Problem;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;

/**
 * A problem of a text that is being typed, with the letters that it is about.
 *
 * @param problem the problem
 * @param place the letters in the plain text; empty when the whole page is meant
 * @param column where they begin on the problem's line, from 1; 0 when the whole page is meant
 */
public record MarkedProblem(Problem problem, Optional<Stretch> place, int column) {
  private static final Pattern PART = Pattern.compile("([^.\\[\\]]+)|\\[([0-9]+)\\]");
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"|“([^”]+)”");

  /**
   * Finds the letters of problems.
   *
   * @param plain the text that was read, with line ends {@code \n} and without a mark
   */
  public static List<MarkedProblem> in(String plain, List<Problem> problems) {
    PageText page = new PageText(plain);
    Optional<Stretch> header = page.header();
    Optional<HeaderSource> source = header.map(at -> new HeaderSource(at.of(plain)));
    List<Integer> lines = new ArrayList<>(List.of(0));
    for (int end = plain.indexOf('\n'); end >= 0; end = plain.indexOf('\n', end + 1)) {
      lines.add(end + 1);
    }
    List<MarkedProblem> marked = new ArrayList<>();
    for (Problem problem : problems) {
      int line = problem.line();
      if (line < 1 || line > lines.size()) {
        marked.add(new MarkedProblem(problem, Optional.empty(), 0));
        continue;
      }
      Stretch whole = line(plain, lines.get(line - 1));
      boolean inHeader =
          header.isPresent()
              && whole.from() >= header.get().from()
              && whole.from() < header.get().to();
      Stretch place =
          (inHeader
                  ? key(problem.key(), source.get(), header.get().from(), whole)
                  : quoted(problem, plain, whole))
              .orElse(whole);
      marked.add(
          new MarkedProblem(problem, Optional.of(place), place.from() - lines.get(line - 1) + 1));
    }
    return marked;
  }

  /** A line without the blanks around it. */
  private static Stretch line(String plain, int from) {
    int end = plain.indexOf('\n', from);
    int to = end < 0 ? plain.length() : end;
    int begin = from;
    while (begin < to && plain.charAt(begin) == ' ') {
      begin++;
    }
    while (to > begin && plain.charAt(to - 1) == ' ') {
      to--;
    }
    return new Stretch(begin, to);
  }

  /** The value of a key, or of the nearest key above it, as far as it stands on the line. */
  private static Optional<Stretch> key(String key, HeaderSource source, int header, Stretch line) {
    List<String> path = new ArrayList<>();
    Matcher part = PART.matcher(key);
    while (part.find()) {
      path.add(
          part.group(1) != null
              ? part.group(1)
              : Integer.toString(Integer.parseInt(part.group(2)) - 1));
    }
    for (int size = path.size(); size > 0; size--) {
      Optional<HeaderSource.Place> place =
          source.place(path.subList(0, size).toArray(String[]::new));
      if (place.isPresent()) {
        int from = header + place.get().from();
        int to = Math.min(header + place.get().to(), line.to());
        return from >= line.from() && from < to
            ? Optional.of(new Stretch(from, to))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** What the problem quotes, where it stands on the line. */
  private static Optional<Stretch> quoted(Problem problem, String plain, Stretch line) {
    Matcher quoted = QUOTED.matcher(problem.wrong());
    if (quoted.find()) {
      String words = quoted.group(1) == null ? quoted.group(2) : quoted.group(1);
      for (int at = line.from(); at + words.length() <= line.to(); at++) {
        if (plain.regionMatches(true, at, words, 0, words.length())) {
          return Optional.of(new Stretch(at, at + words.length()));
        }
      }
    }
    return Optional.empty();
  }
}
