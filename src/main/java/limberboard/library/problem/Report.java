package limberboard.library.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Collects the problems of one file, and knows on which line each of its keys stands. */
public final class Report {
  private static final Pattern INDEX = Pattern.compile("[0-9]{1,6}");

  private final String file;
  private final Map<String, Integer> lines;
  private final List<Problem> problems = new ArrayList<>();
  private int more;

  /**
   * A report on a file.
   *
   * @param file relative to the workspace
   * @param lines JSON pointer of a key or list entry to its line
   */
  public Report(String file, Map<String, Integer> lines) {
    this.file = file;
    this.lines = lines;
  }

  /** Reports an error at a key, given as a JSON pointer ({@code /causes/0/mend}). */
  public void error(String pointer, String wrong, String right) {
    add(Problem.error(file, line(pointer), key(pointer), wrong, right));
  }

  /** Reports a warning at a key. */
  public void warning(String pointer, String wrong, String right) {
    add(Problem.warning(file, line(pointer), key(pointer), wrong, right));
  }

  /** Reports an error on a line of the body. */
  public void errorOnLine(int line, String what, String wrong, String right) {
    add(Problem.error(file, line, what, wrong, right));
  }

  /** Reports a warning on a line of the body. */
  public void warningOnLine(int line, String what, String wrong, String right) {
    add(Problem.warning(file, line, what, wrong, right));
  }

  private void add(Problem problem) {
    if (problems.size() < Limits.PROBLEMS_OF_FILE) {
      problems.add(problem);
    } else {
      more++;
    }
  }

  /** The pointer of a key within the mapping at another pointer (RFC 6901). */
  public static String pointer(String mapping, String key) {
    return mapping + "/" + key.replace("~", "~0").replace("/", "~1");
  }

  /** Whether anything has been reported. */
  public boolean isEmpty() {
    return problems.isEmpty();
  }

  /** JSON pointer of a key to its line. */
  public Map<String, Integer> lines() {
    return lines;
  }

  public List<Problem> problems() {
    if (more == 0) {
      return List.copyOf(problems);
    }
    List<Problem> all = new ArrayList<>(problems);
    all.add(
        Problem.warning(file, 0, "", "has " + more + " more problems", "mend the others first"));
    return all;
  }

  /** The line of a key, or of the nearest key above it that is there. */
  private int line(String pointer) {
    String at = pointer;
    while (!lines.containsKey(at)) {
      int slash = at.lastIndexOf('/');
      if (slash < 0) {
        return 1;
      }
      at = at.substring(0, slash);
    }
    return lines.get(at);
  }

  /** {@code /causes/0/mend} as a person writes it: {@code causes[1].mend}. */
  private static String key(String pointer) {
    StringBuilder key = new StringBuilder();
    for (String part : pointer.split("/")) {
      if (part.isEmpty()) {
        continue;
      }
      if (INDEX.matcher(part).matches()) {
        key.append('[').append(Integer.parseInt(part) + 1).append(']');
      } else {
        key.append(key.isEmpty() ? "" : ".").append(part);
      }
    }
    return key.toString();
  }
}
