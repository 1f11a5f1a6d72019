package limberboard.print.picture;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import limberboard.library.picture.PictureSafety;
import limberboard.print.type.InterFonts;

/**
 * A drawing in SVG. It can be painted at any size, on a screen or into a PDF. A drawing with
 * scripts, or that refers to anything outside itself, cannot be made into one. Immutable.
 */
public final class SvgPicture implements Picture {
  /** What the library would print of a drawing that it reads with reservations. */
  private static final Logger LIBRARY = Logger.getLogger("com.github.weisj.jsvg");

  static {
    LIBRARY.setLevel(Level.OFF);
  }

  private final SVGDocument document;

  private SvgPicture(SVGDocument document) {
    this.document = document;
  }

  /** The drawing in the colours of a look; empty when it cannot be read or must not be shown. */
  public static Optional<SvgPicture> parse(String svg, Look look) {
    if (PictureSafety.wrong(stream(svg)).isPresent()) {
      return Optional.empty();
    }
    InterFonts.registerForPainting();
    LoaderContext context =
        LoaderContext.builder().externalResourcePolicy(ResourcePolicy.DENY_ALL).build();
    SVGDocument document;
    try {
      String coloured = look == Look.DARK ? DarkColours.of(svg) : svg;
      document = new SVGLoader().load(stream(coloured), null, context);
    } catch (RuntimeException e) {
      return Optional.empty();
    }
    return Optional.ofNullable(document)
        .filter(read -> read.size().width >= 1 && read.size().height >= 1)
        .map(SvgPicture::new);
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public int width() {
    return Math.round(document.size().width);
  }

  @Override
  public int height() {
    return Math.round(document.size().height);
  }

  /** Paints it from the origin into a place of this size. */
  public void paint(Graphics2D graphics, double width, double height) {
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    try {
      document.renderWithPlatform(
          NullPlatformSupport.INSTANCE, graphics, new ViewBox((float) width, (float) height));
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      frame(graphics, width, height);
    }
  }

  /** What stands for a drawing that asks for more than there is. */
  private static void frame(Graphics2D graphics, double width, double height) {
    graphics.setColor(Color.GRAY);
    graphics.setStroke(new BasicStroke(1));
    graphics.draw(new Rectangle2D.Double(0, 0, width - 1, height - 1));
    graphics.draw(new Line2D.Double(0, 0, width - 1, height - 1));
    graphics.draw(new Line2D.Double(0, height - 1, width - 1, 0));
  }

  /** The drawing as pixels of exactly this size. */
  public BufferedImage pixels(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D graphics = image.createGraphics();
    paint(graphics, width, height);
    graphics.dispose();
    return image;
  }

  @Override
  public Image image(int width, int height) {
    return new SharpImage(width, height, this::pixels);
  }
}
