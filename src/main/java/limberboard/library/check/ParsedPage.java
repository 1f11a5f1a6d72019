package limberboard.library.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.body.BodyScan;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;

/**
 * One file of the library as far as it can be read by itself.
 *
 * @param id file name without ending
 * @param path relative to the workspace
 * @param page the page, empty when it cannot be used
 * @param scan what its body refers to
 * @param quotes the figures that it may quote
 * @param lines JSON pointers of its header's keys to lines
 * @param problems what is wrong with the file by itself
 */
public record ParsedPage(
    String id,
    String path,
    Optional<Page<?>> page,
    BodyScan scan,
    PageQuotes quotes,
    Map<String, Integer> lines,
    List<Problem> problems) {

  /** The same with the page as it is shown. */
  ParsedPage with(Page<?> shown) {
    return new ParsedPage(id, path, Optional.of(shown), scan, quotes, lines, problems);
  }

  /** A new report on this file. */
  Report report() {
    return new Report(path, lines);
  }
}
