/**
 * Type: the typeface, the width of words in it, what paper cannot show, and signs set well.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.print.type.*;
 *
 * assert TextWidth.of("mast", 10, true) > TextWidth.of("mast", 10, false);
 * List<String> lines = TextWidth.wrap("Turn the shaft by hand and listen.", 10, false, 80);
 * assert lines.size() > 1 && lines.stream().allMatch(line -> TextWidth.of(line, 10, false) <= 80);
 * }</pre>
 *
 * <p><b>Choices made.</b> One typeface lies in the program, so that screen, paper and drawings
 * break lines alike.
 *
 * <p><b>Threads.</b> Any thread; {@link limberboard.print.type.PaperLetters} is for one page.
 */
package limberboard.print.type;
