package limberboard.library.header;

import java.util.Map;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;

/**
 * Where the keys of a page's header stand in its file, for whoever finds something odd about a page
 * that was read long before. Immutable.
 */
public final class KeyLines {
  private final String path;
  private final Map<String, Integer> lines;

  private KeyLines(String path, Map<String, Integer> lines) {
    this.path = path;
    this.lines = Map.copyOf(lines);
  }

  /**
   * Looks into the page's file. Where it has gone or can no longer be read, every key is taken to
   * stand on the first line.
   */
  public static KeyLines of(WorkspaceFolders folders, Page<?> page) {
    TextFile.Result read = TextFile.read(folders.root().resolve(page.path()), page.path());
    return of(page, read.text());
  }

  /** The same of a page's text that is being typed. */
  public static KeyLines of(Page<?> page, String text) {
    return new KeyLines(
        page.path(),
        HeaderText.part(text)
            .map(parts -> YamlTree.read(page.path(), parts.header(), parts.headerLine()))
            .map(tree -> tree.report().lines())
            .orElse(Map.of()));
  }

  /**
   * A warning at a key of the page.
   *
   * @param pointer the key as a JSON pointer, {@code /causes/0/mend}; where it is not written, the
   *     line of the nearest key above it counts
   * @param wrong what is wrong
   * @param right what would be right
   */
  public Problem warning(String pointer, String wrong, String right) {
    Report report = new Report(path, lines);
    report.warning(pointer, wrong, right);
    return report.problems().get(0);
  }

  /** An error at a key of the page; see {@link #warning}. */
  public Problem error(String pointer, String wrong, String right) {
    Report report = new Report(path, lines);
    report.error(pointer, wrong, right);
    return report.problems().get(0);
  }
}
