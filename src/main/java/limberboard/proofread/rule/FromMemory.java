package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.page.Page;
import limberboard.proofread.text.TextPiece;

/**
 * “From memory” beside a figure that carries safety: of torque, load, gas, pressure or current.
 * Where the page says that the maker's figure goes before, it is as it should be.
 */
final class FromMemory implements Rule {
  private static final Pattern MEMORY = Pattern.compile("\\bfrom memory\\b");
  private static final Pattern MAKERS =
      Pattern.compile(
          "\\b(maker|handbook|sheet|label|book|printed|battery|plate|block)('s|’s)?\\b[^.]*"
              + "\\b(comes?|goes|go|come|has|have|names?|says?) ?(before|first|nothing|it|the)?"
              + "|by the maker|the maker's figure");
  private static final Pattern STANDARD = Pattern.compile("\\b(ISO|EN|IEC|DNV|SAE)\\b");
  private static final Pattern SAFETY =
      Pattern.compile(
          "\\btorques?\\b|\\d N·m|\\bload\\b|\\d kN\\b|\\d N\\b|\\bpressures?\\b|\\d m?bar\\b"
              + "|\\d A\\b|\\bcurrent\\b");

  @Override
  public String name() {
    return "from-memory";
  }

  @Override
  public List<PageRemark> on(Page<?> page, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    boolean makers = false;
    for (TextPiece passage : around.passages(page)) {
      makers |= SAFETY.matcher(passage.text()).find() && MAKERS.matcher(passage.text()).find();
      look(page, passage.text(), passage.line(), found);
    }
    for (int i = 0; i < page.head().sources().size() && !makers; i++) {
      String source = page.head().sources().get(i);
      if (!STANDARD.matcher(source).find()) {
        look(page, source, around.line(page, "/sources/" + i), found);
      }
    }
    return found;
  }

  private void look(Page<?> page, String text, int line, List<PageRemark> found) {
    Matcher figure = SAFETY.matcher(text);
    boolean memory = MEMORY.matcher(text).find();
    if (memory && !MAKERS.matcher(text).find() && figure.find()) {
      found.add(
          PageRemark.at(
              this,
              Gravity.HURTS,
              page,
              line,
              figure.group().replaceFirst("^\\d ", ""),
              "a figure that carries safety is from memory: “" + shortened(text) + "”",
              "name the source that it was checked against, or say that the maker's figure goes"
                  + " before"));
    }
  }

  private static String shortened(String text) {
    int at = Math.max(0, text.indexOf("from memory") - 60);
    String rest = text.substring(at == 0 ? 0 : text.indexOf(' ', at) + 1);
    return rest.substring(0, rest.indexOf("from memory") + "from memory".length());
  }
}
