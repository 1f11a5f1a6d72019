package limberboard.desktop.look;

import com.formdev.flatlaf.FlatLightLaf;

/**
 * The light theme. Its colours and measures are in {@code LightPaper.properties}, which FlatLaf
 * reads because it has the name of this class.
 */
public final class LightPaper extends FlatLightLaf {
  @Override
  public String getName() {
    return "Limberboard light";
  }
}
