/**
 * The small parts that every place of the window is made of: columns whose text wraps, rows, lists
 * of cards, labels by rank.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make text with {@link limberboard.desktop.parts.Text};
 *   <li>put it into a {@link limberboard.desktop.parts.Column} or {@link
 *       limberboard.desktop.parts.Row};
 *   <li>show the column with {@link limberboard.desktop.parts.Column#scrolling}.
 * </ol>
 *
 * <pre>{@code
 * import limberboard.desktop.parts.*;
 *
 * Column column = new Column(8);
 * column.add(Text.heading("The bilge"));
 * column.add(Text.plain("Look under the boards first. ".repeat(10)));
 * column.setSize(600, 1);
 * int low = column.getPreferredSize().height;
 * column.setSize(150, 1);
 * assert column.getPreferredSize().height > low; // the text wraps, and nothing is cut off
 * }</pre>
 *
 * <p><b>Choices made.</b> Wrapped text needs to know its width before its height; {@link
 * limberboard.desktop.parts.ColumnLayout} and {@link limberboard.desktop.parts.RowLayout} hand
 * widths down before they ask for heights, so text never gets cut off at any size. Structures
 * without wrapped text use MigLayout.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.parts;
