package limberboard.desktop.write.symptom;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.problem.Problem;
import limberboard.trace.review.Remark;
import limberboard.words.Sentences;
import limberboard.writing.symptom.SymptomTable;
import limberboard.writing.symptom.TableCause;
import limberboard.writing.symptom.TableCheck;

/**
 * Something that is wrong with a symptom, or could be better.
 *
 * @param rank what kind of finding it is
 * @param about the cause or check it is about, by its name; empty for the whole page
 * @param wrong what is wrong, a sentence
 * @param right what would be right, a sentence
 * @param cell where it can be mended in the table; empty where it cannot
 */
record SymptomFinding(
    Rank rank, String about, String wrong, String right, Optional<TableCell> cell) {
  private static final Pattern KEY =
      Pattern.compile("/?(causes|checks)[/\\[]([0-9]{1,4})\\]?(?:[./]([a-z-]+))?(.*)");

  private static final Map<String, String> KEYS =
      Map.of(
          "ask", "the question",
          "how", "how it is done",
          "minutes", "how many minutes it takes",
          "weight", "how common it is",
          "mend", "what mends it",
          "title", "its name",
          "finds", "what the answers tell",
          "answers", "the answers");

  /** What kind of finding it is, the gravest first. */
  public enum Rank {
    /** The page does not work like this. */
    WRONG("To mend"),
    /** Worth a look. */
    LOOK("Worth a look"),
    /** What the plans make no use of. */
    PLAN("What the plans leave out");

    private final String heading;

    Rank(String heading) {
      this.heading = heading;
    }

    /** As a heading. */
    String heading() {
      return heading;
    }
  }

  static SymptomFinding of(Problem problem, SymptomTable table) {
    Rank rank = problem.severity() == Problem.Severity.ERROR ? Rank.WRONG : Rank.LOOK;
    boolean known = KEY.matcher(problem.key()).lookingAt();
    String key = problem.key().isEmpty() || known ? keyWithin(problem.key()) : problem.key() + " ";
    return of(rank, problem.key(), 1, key + problem.wrong(), problem.right(), table);
  }

  /** What stands behind the entry of the list. */
  private static String keyWithin(String key) {
    Matcher parts = KEY.matcher(key);
    return parts.matches() && parts.group(3) != null
        ? KEYS.getOrDefault(parts.group(3), parts.group(3)) + " "
        : "";
  }

  static SymptomFinding of(Rank rank, Remark remark, SymptomTable table) {
    return of(rank, remark.pointer(), 0, remark.wrong(), remark.right(), table);
  }

  private static SymptomFinding of(
      Rank rank, String key, int from, String wrong, String right, SymptomTable table) {
    Matcher parts = KEY.matcher(key);
    String about = "";
    Optional<TableCell> cell = Optional.empty();
    if (parts.matches()) {
      int number = Integer.parseInt(parts.group(2)) - from;
      String within = parts.group(3) == null ? "" : parts.group(3);
      boolean causes = parts.group(1).equals("causes");
      if (causes && number < table.causes().size()) {
        about = table.causes().get(number).title();
        cell = Optional.of(cause(number, within));
      } else if (!causes && number >= 0 && number < table.checks().size()) {
        about = table.checks().get(number).ask();
        cell = Optional.of(check(number, within));
      }
    } else if (key.startsWith("zones")) {
      cell = Optional.of(new TableCell.Zones());
    } else if (key.equals("title")) {
      cell = Optional.of(new TableCell.PageTitle());
    } else if (key.startsWith("causes")) {
      cell = Optional.of(new TableCell.NewCause());
    } else if (key.startsWith("checks")) {
      cell = Optional.of(new TableCell.NewCheck());
    }
    return new SymptomFinding(rank, about, sentence(wrong, table), sentence(right, table), cell);
  }

  private static TableCell cause(int number, String key) {
    return switch (key) {
      case "weight" -> new TableCell.Weight(number);
      case "mend" -> new TableCell.Mend(number);
      default -> new TableCell.CauseTitle(number);
    };
  }

  private static TableCell check(int number, String key) {
    return switch (key) {
      case "how" -> new TableCell.How(number);
      case "minutes" -> new TableCell.CheckMinutes(number);
      case "answers" -> new TableCell.Answer(number, 0);
      default -> new TableCell.Ask(number);
    };
  }

  /** With names where ids stand, and a full stop. */
  private static String sentence(String words, SymptomTable table) {
    String named = words;
    for (TableCause cause : table.causes()) {
      named = named(named, cause.id(), cause.title());
    }
    for (TableCheck check : table.checks()) {
      named = named(named, check.id(), check.ask());
    }
    String capital = Sentences.capital(named);
    return capital.isEmpty() || capital.endsWith(".") ? capital : capital + ".";
  }

  private static String named(String words, String id, String title) {
    return title.isEmpty() || id.isEmpty()
        ? words
        : words.replace("\"" + id + "\"", Sentences.quoted(title));
  }
}
