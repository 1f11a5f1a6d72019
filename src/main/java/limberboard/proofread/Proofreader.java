package limberboard.proofread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.KeyLines;
import limberboard.library.page.AuthorAnswer;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.rule.Gravity;
import limberboard.proofread.rule.HeaderMend;
import limberboard.proofread.rule.PageRemark;
import limberboard.proofread.rule.Rule;
import limberboard.proofread.rule.Rules;
import limberboard.proofread.rule.Surroundings;

/**
 * Reads pages as a proofreader does. What an author has answered in a page's header is not said
 * again; an answer to what is no longer found is. For one thread at a time.
 */
public final class Proofreader {
  /** The name under which answers themselves are found fault with. */
  public static final String ANSWER = "answer";

  private final Surroundings around;

  /**
   * A proofreader of a library.
   *
   * @param folders where its files lie
   * @param words what is looked for
   */
  public Proofreader(WorkspaceFolders folders, Library library, TradeWords words) {
    Map<String, KeyLines> lines = new HashMap<>();
    around =
        new Surroundings(
            library,
            words,
            (page, pointer) ->
                lines
                    .computeIfAbsent(page.id(), none -> KeyLines.of(folders, page))
                    .warning(pointer, "", "")
                    .line());
  }

  /**
   * What came of reading a page.
   *
   * @param open what nobody has answered, by line
   * @param answered what its author has answered, by line
   */
  public record Proof(List<PageRemark> open, List<PageRemark> answered) {
    /** Copies the lists. */
    public Proof {
      open = List.copyOf(open);
      answered = List.copyOf(answered);
    }
  }

  /** Reads a page. */
  public Proof read(Page<?> page) {
    return read(page, around);
  }

  /**
   * Reads a page as it is being typed. The other pages are gone through once, at the first of them.
   *
   * @param page the page as it is now
   * @param text its whole text, with line ends {@code \n}
   * @param with all pages with this one as it is now
   */
  public Proof readTyped(Page<?> page, String text, Library with) {
    KeyLines lines = KeyLines.of(page, text);
    return read(
        page, around.around(page, with, (of, pointer) -> lines.warning(pointer, "", "").line()));
  }

  private static Proof read(Page<?> page, Surroundings around) {
    List<PageRemark> open = new ArrayList<>();
    List<PageRemark> answered = new ArrayList<>();
    for (Rule rule : Rules.all()) {
      for (PageRemark finding : rule.on(page, around)) {
        (isAnswered(page, finding) ? answered : open).add(finding);
      }
    }
    open.addAll(stale(page, answered, around));
    open.sort(Comparator.comparingInt(PageRemark::line));
    answered.sort(Comparator.comparingInt(PageRemark::line));
    return new Proof(open, answered);
  }

  /** What may hurt somebody, and nobody has answered, as problems of the page's file. */
  public List<Problem> grave(Page<?> page) {
    return Rules.grave().stream()
        .flatMap(rule -> rule.on(page, around).stream())
        .filter(found -> found.gravity() == Gravity.HURTS)
        .filter(found -> !isAnswered(page, found))
        .map(
            found ->
                Problem.warning(
                    found.file(),
                    found.line(),
                    found.rule(),
                    found.about() + ": " + found.wrong(),
                    found.right()))
        .toList();
  }

  private static boolean isAnswered(Page<?> page, PageRemark finding) {
    return page.head().answered().stream().anyMatch(each -> meets(each, finding));
  }

  private static boolean meets(AuthorAnswer answer, PageRemark finding) {
    return answer.rule().equals(finding.rule())
        && (answer.about().isEmpty() || answer.about().equals(finding.about()));
  }

  private static List<PageRemark> stale(
      Page<?> page, List<PageRemark> answered, Surroundings around) {
    List<PageRemark> stale = new ArrayList<>();
    List<AuthorAnswer> answers = page.head().answered();
    for (int i = 0; i < answers.size(); i++) {
      AuthorAnswer answer = answers.get(i);
      if (answered.stream().noneMatch(finding -> meets(answer, finding))) {
        stale.add(
            stale(page, answer, around.line(page, "/answered/" + i))
                .mendedBy(new HeaderMend.TakesOut("/answered", i)));
      }
    }
    return stale;
  }

  private static PageRemark stale(Page<?> page, AuthorAnswer answer, int line) {
    boolean known = Rules.names().contains(answer.rule());
    String about = answer.about().isEmpty() ? "" : " about “" + answer.about() + "”";
    return new PageRemark(
        ANSWER,
        Gravity.STUMBLES,
        page.id(),
        page.path(),
        line,
        answer.rule(),
        known
            ? "answers “" + answer.rule() + "”" + about + ", which is not found"
            : "answers “" + answer.rule() + "”, and there is no such rule",
        known
            ? "take the answer out"
            : Nearest.advice(
                answer.rule(), Rules.names(), "rules are " + String.join(", ", Rules.names())),
        Optional.empty());
  }
}
