/**
 * Type: the typeface, the width of words in it, what paper cannot show, and signs set well.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.print.type.*;
 *
 * TextMeasure inter = FontMeasure.inter(10);
 * assert inter.width("mast", true) > inter.width("mast", false);
 * List<String> lines = inter.lines("Turn the shaft by hand and listen.", false, 80, 9);
 * assert lines.size() > 1 && lines.stream().allMatch(line -> inter.width(line, false) <= 80);
 * }</pre>
 *
 * <p><b>Choices made.</b> One typeface lies in the program, so that screen, paper and drawings
 * break lines alike.
 *
 * <p><b>Threads.</b> Any thread; {@link limberboard.print.type.PaperLetters} is for one page.
 */
package limberboard.print.type;
