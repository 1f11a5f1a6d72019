/**
 * A page as data: {@link limberboard.print.page.CutPage}, its {@link limberboard.print.page.Part
 * parts}, {@link limberboard.print.page.Block blocks} and {@link limberboard.print.page.Inline runs
 * of text}. What cuts makes it, and what renders writes it.
 *
 * <pre>{@code
 * import java.util.List;
 * import limberboard.library.page.Kind;
 * import limberboard.print.page.*;
 *
 * var box =
 *     new Block.CautionBox("flooding", "Flooding", "She may sink.", List.of("Pump."), "", "");
 * var cautions = new Part(Part.Role.CAUTIONS, "Before you begin", List.of(box));
 * var body = new Part(Part.Role.BODY, "", List.of(Block.Paragraph.of("Look for the leak.")));
 * var parts = List.of(cautions, body);
 * var page = new CutPage("leak", Kind.TOPIC, "Topic", "A leak", "", "", parts);
 * assert page.cautions().equals(List.of(box));
 * assert page.part(Part.Role.TOOLS).isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> Blocks and runs are sealed: a new one has to be told to every renderer.
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.print.page;
