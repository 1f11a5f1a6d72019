package limberboard.proofread.rule;

import java.util.Optional;
import limberboard.library.page.Page;

/**
 * What a proofreader says of a place.
 *
 * @param rule the rule's name, by which an author answers
 * @param gravity how grave it is
 * @param page the page's id
 * @param file the page's file, relative to the workspace
 * @param line from 1
 * @param about what it is about, in a few words, by which an author answers
 * @param wrong what is wrong
 * @param right what would be right
 * @param mend the one step in its page's header that mends it, where that is certain
 */
public record PageRemark(
    String rule,
    Gravity gravity,
    String page,
    String file,
    int line,
    String about,
    String wrong,
    String right,
    Optional<HeaderMend> mend) {

  /** The same, mended by this one step. */
  public PageRemark mendedBy(HeaderMend step) {
    return new PageRemark(rule, gravity, page, file, line, about, wrong, right, Optional.of(step));
  }

  /** A finding on a line of a page's file. */
  static PageRemark at(
      Rule rule,
      Gravity gravity,
      Page<?> page,
      int line,
      String about,
      String wrong,
      String right) {
    return new PageRemark(
        rule.name(), gravity, page.id(), page.path(), line, about, wrong, right, Optional.empty());
  }

  /** One line: file, line, how grave, rule and what it is about, what is wrong and right. */
  @Override
  public String toString() {
    return file
        + (":" + line + ": ")
        + (gravity.words() + ": ")
        + (rule + ": " + about + ": ")
        + (wrong + "; " + right);
  }
}
