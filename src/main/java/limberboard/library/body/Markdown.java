package limberboard.library.body;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * Parses a page's body: CommonMark with tables, in one way for whoever checks, searches or prints
 * it.
 *
 * <p>Two limits keep hostile input from exhausting the stack: blocks are nested at most {@value
 * #MOST_OPEN_BLOCKS} deep, and in a run of lines without a blank one that has more than {@value
 * #MOST_MARKS} stars, underscores and opening brackets these are read as plain letters.
 */
public final class Markdown {
  private static final int MOST_OPEN_BLOCKS = 100;
  private static final int MOST_MARKS = 4000;
  private static final String MARKS = "*_[";

  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
          .maxOpenBlockParsers(MOST_OPEN_BLOCKS)
          .build();

  private Markdown() {}

  /** The document; its line numbers are the body's. */
  public static Node parse(String body) {
    return PARSER.parse(tamed(body));
  }

  /** The body, with the marks of overfull runs of lines made plain. */
  private static String tamed(String body) {
    if (marks(body) <= MOST_MARKS) {
      return body;
    }
    StringBuilder tamed = new StringBuilder();
    StringBuilder run = new StringBuilder();
    for (String line : body.split("(?<=\n)")) {
      if (line.isBlank()) {
        tamed.append(tamedRun(run)).append(line);
        run.setLength(0);
      } else {
        run.append(line);
      }
    }
    return tamed.append(tamedRun(run)).toString();
  }

  private static String tamedRun(CharSequence run) {
    return marks(run) <= MOST_MARKS
        ? run.toString()
        : run.toString().replace("*", "\\*").replace("_", "\\_").replace("[", "\\[");
  }

  private static long marks(CharSequence text) {
    return text.chars().filter(c -> MARKS.indexOf(c) >= 0).count();
  }
}
