package limberboard.print.pdf;

import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import limberboard.print.picture.Picture;
import limberboard.print.picture.RasterPicture;
import limberboard.print.picture.SvgPicture;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextFSImage;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A picture in a PDF: drawings stay lines and can be enlarged without end. */
final class PdfPicture implements ITextReplacedElement {
  private final Picture picture;
  private final int width;
  private final int height;
  private Point location = new Point(0, 0);

  /** A picture of this size in dots; where a side is negative, its natural one. */
  PdfPicture(Picture picture, int width, int height, int dotsPerPixel) {
    this.picture = picture;
    this.width = width >= 0 ? width : picture.width() * dotsPerPixel;
    this.height = height >= 0 ? height : picture.height() * dotsPerPixel;
  }

  @Override
  public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
    Rectangle place = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
    try {
      ITextFSImage image = new ITextFSImage(image(device));
      device.drawImage(image.scale(place.width, place.height), place.x, place.y);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Image image(ITextOutputDevice device) throws IOException {
    if (picture instanceof SvgPicture drawing) {
      PdfTemplate template =
          device.getCurrentPage().createTemplate(drawing.width(), drawing.height());
      Graphics2D graphics = template.createGraphicsShapes(drawing.width(), drawing.height());
      drawing.paint(graphics, drawing.width(), drawing.height());
      graphics.dispose();
      return Image.getInstance(template);
    }
    return Image.getInstance(((RasterPicture) picture).pixels(), null);
  }

  @Override
  public int getIntrinsicWidth() {
    return width;
  }

  @Override
  public int getIntrinsicHeight() {
    return height;
  }

  @Override
  public Point getLocation() {
    return location;
  }

  @Override
  public void setLocation(int x, int y) {
    location = new Point(x, y);
  }

  @Override
  public void detach(LayoutContext context) {
    // holds nothing that has to be let go
  }

  @Override
  public boolean isRequiresInteractivePaint() {
    return false;
  }

  @Override
  public boolean hasBaseline() {
    return false;
  }

  @Override
  public int getBaseline() {
    return 0;
  }
}
