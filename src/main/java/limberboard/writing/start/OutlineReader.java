package limberboard.writing.start;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.header.Ids;
import limberboard.library.problem.Problem;

/**
 * Reads an outline: a line <i>Causes</i> and below it one cause a line, a line <i>Checks</i> and
 * below it one question a line; what belongs to one is indented below it. Lines may be items of a
 * list and the two words headings, as Markdown has them. See {@code docs/file-formats.md}.
 */
public final class OutlineReader {
  private static final Pattern LINE =
      Pattern.compile("([ \\t]*)(?:[-*+][ \\t]+|[0-9]{1,3}[.)][ \\t]+)?(.*?)[ \\t]*");
  private static final Pattern BEHIND = Pattern.compile("(.*\\S)\\s*\\(([^()]*)\\)");
  private static final Pattern KEY = Pattern.compile("([a-z]+):\\s*(.*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern TIME =
      Pattern.compile(
          "([0-9]+(?:\\.[0-9]+)?)\\s*(m|min|minutes?|h|hours?)", Pattern.CASE_INSENSITIVE);
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");
  private static final int TAB = 4;
  private static final int CAUSE_WORDS = 4;
  private static final int CHECK_WORDS = 3;
  private static final double HOUR = 60;

  private final String file;
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> causeIds = new HashSet<>();
  private final Set<String> checkIds = new HashSet<>();

  private OutlineReader(String file) {
    this.file = file;
  }

  /** A line with what is indented below it. */
  private record Entry(String text, int line, List<Entry> below) {}

  /**
   * Reads an outline.
   *
   * @param file what problems call it
   * @param text the outline
   */
  public static SymptomOutline read(String file, String text) {
    return new OutlineReader(file).read(text);
  }

  private SymptomOutline read(String text) {
    Map<String, List<Entry>> parts = parts(text);
    List<OutlinedCause> causes = parts.get("causes").stream().map(this::cause).toList();
    FindsReader finds = new FindsReader(causes, this::wrong);
    List<OutlinedCheck> checks =
        parts.get("checks").stream().map(entry -> check(entry, finds)).toList();
    if (causes.isEmpty()) {
      wrong(0, "names no causes", "write a line Causes, and below it one cause a line");
    }
    if (checks.isEmpty()) {
      wrong(0, "names no checks", "write a line Checks, and below it one question a line");
    }
    return new SymptomOutline(causes, checks, problems);
  }

  private void wrong(int line, String wrong, String right) {
    problems.add(Problem.warning(file, line, "", wrong, right));
  }

  private Map<String, List<Entry>> parts(String text) {
    Map<String, List<Entry>> parts = new LinkedHashMap<>();
    parts.put("causes", new ArrayList<>());
    parts.put("checks", new ArrayList<>());
    String part = "";
    int margin = -1;
    int number = 0;
    for (String line : text.replace("\r\n", "\n").split("\n", -1)) {
      number++;
      String heading = line.replaceAll("[#*:]", "").strip().toLowerCase(Locale.ROOT);
      if (parts.containsKey(heading)) {
        part = heading;
        margin = -1;
      } else if (!line.isBlank()) {
        Matcher parsed = LINE.matcher(line);
        parsed.matches();
        int indent = parsed.group(1).replace("\t", " ".repeat(TAB)).length();
        Entry entry = new Entry(parsed.group(2), number, new ArrayList<>());
        List<Entry> all = parts.getOrDefault(part, List.of());
        if (part.isEmpty()) {
          wrong(number, "stands before Causes and Checks", "put it below one of these words");
        } else if (all.isEmpty() || indent <= margin + 1) {
          margin = all.isEmpty() ? indent : margin;
          all.add(entry);
        } else {
          all.get(all.size() - 1).below().add(entry);
        }
      }
    }
    return parts;
  }

  private OutlinedCause cause(Entry entry) {
    Map<String, String> said = new LinkedHashMap<>();
    String title = behind(entry.text(), said, true);
    for (Entry below : entry.below()) {
      Matcher key = KEY.matcher(below.text());
      String name = key.matches() ? key.group(1).toLowerCase(Locale.ROOT) : "";
      if (List.of("mend", "weight", "about").contains(name)) {
        said.merge(name, key.group(2).strip(), (a, b) -> a + " " + b);
      } else {
        said.merge("about", below.text(), (a, b) -> a + " " + b);
      }
    }
    return new OutlinedCause(
        id(title, CAUSE_WORDS, "cause", causeIds),
        title,
        said.getOrDefault("about", ""),
        Optional.ofNullable(said.get("weight")),
        Optional.ofNullable(said.get("mend")));
  }

  private OutlinedCheck check(Entry entry, FindsReader finds) {
    Map<String, String> said = new LinkedHashMap<>();
    String text = behind(entry.text(), said, false);
    List<String> answers = new ArrayList<>();
    int asked = text.indexOf('?');
    if (asked >= 0) {
      for (String answer : text.substring(asked + 1).split("[,;/]")) {
        answer(answer, answers);
      }
      text = text.substring(0, asked + 1);
    }
    Map<String, Map<String, String>> found = new LinkedHashMap<>();
    for (Entry below : entry.below()) {
      int colon = below.text().indexOf(':');
      String name = colon < 0 ? below.text() : below.text().substring(0, colon);
      String rest = colon < 0 ? "" : below.text().substring(colon + 1).strip();
      if (name.strip().equalsIgnoreCase("how")) {
        said.merge("how", rest, (a, b) -> a + " " + b);
      } else if (name.strip().equalsIgnoreCase("minutes")) {
        said.put("minutes", minutes(rest).orElse(rest));
      } else {
        String answer = answer(name, answers);
        if (!rest.isEmpty() && !answer.isEmpty()) {
          Map<String, String> row = finds.read(rest, below.line());
          if (!row.isEmpty()) {
            found.put(answer, row);
          }
        }
      }
    }
    return new OutlinedCheck(
        id(text, CHECK_WORDS, "check", checkIds),
        text,
        said.getOrDefault("how", ""),
        Optional.ofNullable(said.get("minutes")),
        answers,
        found);
  }

  /** Adds an answer, if it is one and new, and says its id. */
  private static String answer(String text, List<String> answers) {
    String id = IdWords.of(text);
    if (!id.isEmpty() && !answers.contains(id)) {
      answers.add(id);
    }
    return id;
  }

  /** Takes what stands in brackets at the end of a line, if all of it is understood. */
  private static String behind(String text, Map<String, String> said, boolean cause) {
    Matcher behind = BEHIND.matcher(text);
    if (!behind.matches()) {
      return text;
    }
    Map<String, String> read = new LinkedHashMap<>();
    boolean weighed = behind.group(2).matches(".*\\b[0-9].*");
    for (String part : behind.group(2).split("[,;]")) {
      String word = part.strip();
      if (cause && NUMBER.matcher(word).matches()) {
        read.put("weight", word);
      } else if (cause && (weighed || word.contains("-")) && Ids.isId(word)) {
        read.put("mend", word);
      } else if (!cause && minutes(word).isPresent()) {
        read.put("minutes", minutes(word).get());
      } else {
        return text;
      }
    }
    said.putAll(read);
    return behind.group(1);
  }

  private static Optional<String> minutes(String text) {
    Matcher time = TIME.matcher(text.strip());
    if (!time.matches()) {
      return Optional.of(text.strip()).filter(plain -> NUMBER.matcher(plain).matches());
    }
    boolean hours = time.group(2).toLowerCase(Locale.ROOT).startsWith("h");
    double minutes = Double.parseDouble(time.group(1)) * (hours ? HOUR : 1);
    return Optional.of(
        minutes == Math.rint(minutes) ? Long.toString((long) minutes) : Double.toString(minutes));
  }

  private static String id(String text, int words, String otherwise, Set<String> taken) {
    String brief = IdWords.brief(text, words);
    String id = brief.isEmpty() ? otherwise : brief;
    String unique = id;
    for (int i = 2; !taken.add(unique); i++) {
      unique = id + "-" + i;
    }
    return unique;
  }
}
