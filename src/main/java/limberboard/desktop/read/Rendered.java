package limberboard.desktop.read;

import java.util.Map;
import limberboard.print.CutPage;
import limberboard.print.Picture;
import org.w3c.dom.Document;

/**
 * A page ready to be shown.
 *
 * @param cut the page cut to the boat
 * @param document its XHTML, parsed
 * @param pictures its pictures, by their address in the XHTML
 * @param spoken its text, for somebody who listens to it
 */
public record Rendered(
    CutPage cut, Document document, Map<String, Picture> pictures, String spoken) {
  /** Copies the map. */
  public Rendered {
    pictures = Map.copyOf(pictures);
  }
}
