package limberboard.desktop.read;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.util.Optional;
import org.xhtmlrenderer.layout.Layer;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.swing.Java2DFontContext;
import org.xhtmlrenderer.swing.Java2DOutputDevice;

/**
 * A page that has been laid out at a width: ready to be painted, with its text. Laid out on any
 * thread, painted on the event thread.
 */
final class Laid {
  private final int width;
  private final Dimension size;
  private final LaidOutText text;
  private final SharedContext context;
  private final Layer layer;

  Laid(int width, Dimension size, LaidOutText text, SharedContext context, Layer layer) {
    this.width = width;
    this.size = new Dimension(size);
    this.text = text;
    this.context = context;
    this.layer = layer;
  }

  /** The width it was laid out for, in pixels. */
  int width() {
    return width;
  }

  /** The room it takes, in pixels; wider than it was laid out for when something has to be. */
  Dimension size() {
    return new Dimension(size);
  }

  /** Its text. */
  LaidOutText text() {
    return text;
  }

  /** Paints what lies within the clip. */
  void paint(Graphics2D g) {
    Java2DFontContext fonts = new Java2DFontContext(g);
    context.getTextRenderer().setup(fonts);
    layer.paint(context.newRenderingContextInstance(new Java2DOutputDevice(g), fonts, layer, 0));
  }

  /** Where the top of a window on this page lies that showed another layout of it from y on. */
  int sameTop(LaidOutText before, int y) {
    int passage = 0;
    while (passage < before.passages().size() - 1
        && before.passages().get(passage).box().getMaxY() < y) {
      passage++;
    }
    int at = passage;
    return before.passages().isEmpty()
        ? y
        : same(before, at).map(p -> p.box().y + y - before.passages().get(at).box().y).orElse(y);
  }

  private Optional<LaidOutPassage> same(LaidOutText before, int at) {
    LaidOutPassage old = before.passages().get(at);
    String words = before.text().substring(old.start(), old.end());
    return text.passages().stream()
        .skip(at < text.passages().size() ? at : 0)
        .filter(now -> text.text().substring(now.start(), now.end()).equals(words))
        .findFirst();
  }
}
