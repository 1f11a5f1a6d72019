/**
 * How the window looks: two themes of one family, text sizes, colours by purpose, small drawings
 * for controls.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>call {@link limberboard.desktop.look.Theme#installFonts()} once and {@link
 *       limberboard.desktop.look.Theme#apply} before the first component is made;
 *   <li>take colours from {@link limberboard.desktop.look.Palette} when painting, never numbers;
 *   <li>make text with {@code parts.Text}, which keeps sizes right when the text size changes.
 * </ol>
 *
 * <pre>{@code
 * import java.awt.image.BufferedImage;
 * import limberboard.desktop.look.*;
 *
 * var light = ThemeChoice.LIGHT.lookAndFeel().getDefaults();
 * var dark = ThemeChoice.DARK.lookAndFeel().getDefaults();
 * assert !light.getColor("Limberboard.ink").equals(dark.getColor("Limberboard.ink"));
 *
 * var image = new BufferedImage(16, 16, BufferedImage.TYPE_INT_ARGB);
 * LineIcon.caution(16).paintIcon(new javax.swing.JLabel(), image.createGraphics(), 0, 0);
 * assert image.getRGB(8, 2) != 0;
 * }</pre>
 *
 * <p><b>Choices made.</b> Colours and measures are FlatLaf properties, one file a theme; orange is
 * kept for cautions, so that it means one thing. Contrast of every pair in use is held by a test
 * against WCAG 2.1, success criterion 1.4.3.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread.
 */
package limberboard.desktop.look;
