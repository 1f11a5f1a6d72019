package limberboard.desktop.read;

import java.util.Map;
import limberboard.print.page.CutPage;
import limberboard.print.picture.Picture;
import org.w3c.dom.Document;

/**
 * A page ready to be laid out.
 *
 * @param cut the page cut to the boat
 * @param document its XHTML, parsed; only the thread that lays it out may read it
 * @param pictures its pictures, by their address in the XHTML
 * @param spoken its text, for somebody who listens to it
 * @param state its XHTML and the states of its pictures' files: what is equal looks equal
 */
public record Rendered(
    CutPage cut, Document document, Map<String, Picture> pictures, String spoken, String state) {
  /** Copies the map. */
  public Rendered {
    pictures = Map.copyOf(pictures);
  }

  /** Whether it looks the same as another. */
  boolean isSame(Rendered other) {
    return state.equals(other.state);
  }
}
