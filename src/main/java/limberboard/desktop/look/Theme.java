package limberboard.desktop.look;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.awt.Font;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import limberboard.print.type.InterFonts;

/** Puts a theme and a text size on the whole program. For the event thread only. */
public final class Theme {
  /** Text sizes on offer, in per cent of the usual. */
  public static final List<Integer> TEXT_SIZES = List.of(100, 115, 130, 150, 175, 200);

  private static final int USUAL_POINTS = 14;
  private static final int PER_CENT = 100;

  private Theme() {}

  /** Makes Inter known to Swing and the default family; called once, before the first theme. */
  public static void installFonts() {
    InterFonts.registerForPainting();
    FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
    FlatLaf.setPreferredLightFontFamily(FlatInterFont.FAMILY_LIGHT);
    FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
  }

  /**
   * Sets theme and text size, and brings windows that are already open up to date.
   *
   * @param choice the theme
   * @param percent text size in per cent of the usual, 50 to 400
   */
  public static void apply(ThemeChoice choice, int percent) {
    TextAsWritten.everywhere();
    FlatLaf.setGlobalExtraDefaults(extra(percent));
    FlatLaf.setup(choice.lookAndFeel());
    UIManager.put("defaultFont", font(percent));
    FlatLaf.updateUI();
  }

  private static Font font(int percent) {
    return new FontUIResource(
        FlatInterFont.FAMILY, Font.PLAIN, Math.round(USUAL_POINTS * percent / (float) PER_CENT));
  }

  private static Map<String, String> extra(int percent) {
    return Collections.singletonMap("Limberboard.textPercent", Integer.toString(percent));
  }

  /** The text size now in use, in per cent of the usual. */
  public static int textPercent() {
    int percent = UIManager.getInt("Limberboard.textPercent");
    return percent == 0 ? PER_CENT : percent;
  }

  /** Whether the dark theme is in use. */
  public static boolean isDark() {
    return FlatLaf.isLafDark();
  }
}
