package limberboard.desktop.look;

import com.formdev.flatlaf.FlatDarkLaf;

/**
 * The dark theme. Its colours and measures are in {@code DarkWater.properties}, which FlatLaf reads
 * because it has the name of this class.
 */
public final class DarkWater extends FlatDarkLaf {
  @Override
  public String getName() {
    return "Limberboard dark";
  }
}
