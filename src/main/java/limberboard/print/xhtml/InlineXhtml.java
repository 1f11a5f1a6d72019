package limberboard.print.xhtml;

import java.util.List;
import java.util.Optional;
import limberboard.print.drawing.Markup;
import limberboard.print.markdown.InlineReader;
import limberboard.print.page.Inline;
import limberboard.print.page.InlineWriter;
import limberboard.print.picture.Look;
import limberboard.print.picture.Picture;
import limberboard.print.picture.PictureSize;
import limberboard.print.picture.Pictures;
import limberboard.print.type.Typography;

/** Writes runs of text as XHTML. For one page, on one thread. */
final class InlineXhtml implements InlineWriter {
  private final Markup out;
  private final Pictures pictures;
  private final Look look;

  InlineXhtml(Markup out, Pictures pictures, Look look) {
    this.out = out;
    this.pictures = pictures;
    this.look = look;
  }

  void all(List<Inline> runs) {
    runs.forEach(run -> run.to(this));
  }

  @Override
  public void text(Inline.Text text) {
    out.text(Typography.joined(text.text()));
  }

  @Override
  public void emphasis(Inline.Emphasis emphasis) {
    wrapped("em", emphasis.parts());
  }

  @Override
  public void strong(Inline.Strong strong) {
    wrapped("strong", strong.parts());
  }

  @Override
  public void code(Inline.Code code) {
    out.element("code", code.text());
  }

  @Override
  public void lineBreak(Inline.LineBreak end) {
    out.empty("br");
  }

  private void wrapped(String element, List<Inline> parts, String... attributes) {
    out.open(element, attributes);
    all(parts);
    out.close(element);
  }

  @Override
  public void link(Inline.PageLink link) {
    if (look == Look.PAPER) {
      wrapped("span", link.parts(), "class", "link");
    } else {
      wrapped("a", link.parts(), "href", Xhtml.PAGE + link.id());
    }
  }

  /** On screen the name leads to the whole text at the end of the page. */
  @Override
  public void cautionName(Inline.CautionName name) {
    String title = Typography.joined(name.title());
    if (look == Look.PAPER) {
      out.open("span", "class", "bites").text(title).close("span");
    } else {
      out.open("a", "class", "bites", "href", Xhtml.FULL + name.id()).text(title).close("a");
    }
    out.text(" ");
  }

  @Override
  public void picture(Inline.Picture picture) {
    Optional<Picture> found = pictures.find(picture.path(), look);
    if (found.isEmpty()) {
      String why = pictures.wrong(picture.path(), look).map(told -> "; it " + told).orElse("");
      out.element("span", InlineReader.notShown(picture.alt(), why), "class", "no-picture");
      return;
    }
    PictureSize size = PictureSize.onPage(found.get());
    out.empty(
        "img",
        "src",
        picture.path(),
        "alt",
        picture.alt(),
        "style",
        "width: " + size.width() + "px; height: " + size.height() + "px");
  }
}
