package limberboard.desktop.read;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Guard;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.pdf.StrictXml;
import limberboard.print.picture.Look;
import limberboard.print.picture.Picture;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.print.xhtml.Xhtml;
import limberboard.workings.QuantityWords;
import limberboard.workings.UnitsBeside;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Makes pages ready for the screen and for paper. Any thread, best not the event thread. */
public final class PageRenderer {
  private static final int SPOKEN_WIDTH = 100;
  private final Pictures pictures;
  private final Guard guard;

  /** A renderer of pages with these pictures. */
  public PageRenderer(Pictures pictures) {
    this(pictures, Guard.NONE);
  }

  /**
   * A renderer of pages.
   *
   * @param pictures the pages' pictures
   * @param guard is told of work that must not run on the event thread
   */
  public PageRenderer(Pictures pictures, Guard guard) {
    this.pictures = pictures;
    this.guard = guard;
  }

  /**
   * What is to be rendered.
   *
   * @param library the pages
   * @param page the page
   * @param boat the boat it is cut to; empty for all boats
   * @param imperial whether imperial units stand beside the metric ones
   */
  public record Order(Library library, Page<?> page, Optional<Fitting> boat, boolean imperial) {
    /** A file name without ending: the page, and the boat it is cut to. */
    String fileName() {
      return page.id() + boat.map(fitting -> "-" + fitting.boat().id()).orElse("");
    }

    CutPage cut() {
      QuantityWords quantities =
          imperial ? new QuantityWords(UnitsBeside.IMPERIAL) : QuantityWords.METRIC;
      return new PageCutter(library, quantities).cut(page, boat);
    }
  }

  /**
   * A page for the screen.
   *
   * @param order what is to be rendered
   * @param dark whether the theme is dark
   * @param style the screen's own style
   * @throws IOException when it cannot be rendered
   */
  public Rendered screen(Order order, boolean dark, ScreenStyle style) throws IOException {
    guard.begins("cutting a page");
    return screen(order.cut(), dark, style);
  }

  /**
   * A page that is already cut, or a sheet, for the screen.
   *
   * @param cut what is to be rendered
   * @param dark whether the theme is dark
   * @param style the screen's own style
   * @throws IOException when it cannot be rendered
   */
  public Rendered screen(CutPage cut, boolean dark, ScreenStyle style) throws IOException {
    guard.begins("laying out a page");
    Look look = dark ? Look.DARK : Look.LIGHT;
    String xhtml = style.addTo(new Xhtml(pictures).render(cut, look));
    Document document = StrictXml.parse(xhtml);
    Map<String, Picture> found = read(document, look);
    StringBuilder state = new StringBuilder(xhtml);
    found.keySet().stream().sorted().map(pictures::state).forEach(state::append);
    return new Rendered(
        cut, document, found, new PlainText().render(cut, SPOKEN_WIDTH), state.toString());
  }

  /**
   * A page or a sheet for paper, as a PDF file.
   *
   * @throws IOException when it cannot be laid out
   */
  public byte[] paper(CutPage cut) throws IOException {
    guard.begins("laying out a page for paper");
    return new Pdf(pictures).of(cut);
  }

  private Map<String, Picture> read(Document document, Look look) {
    Map<String, Picture> found = new LinkedHashMap<>();
    NodeList images = document.getElementsByTagName("img");
    for (int i = 0; i < images.getLength(); i++) {
      String source = ((Element) images.item(i)).getAttribute("src");
      pictures.find(source, look).ifPresent(picture -> found.put(source, picture));
    }
    return found;
  }
}
