package limberboard.print.xhtml;

import java.util.List;
import java.util.Locale;
import limberboard.print.drawing.Markup;
import limberboard.print.drawing.TreeCard;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.markdown.InlineReader;
import limberboard.print.page.Block;
import limberboard.print.page.BlockWriter;
import limberboard.print.page.Inline;
import limberboard.print.picture.DrawnInPage;
import limberboard.print.picture.Look;
import limberboard.print.picture.PictureSize;
import limberboard.print.picture.Pictures;
import limberboard.print.type.Typography;

/** Writes blocks as XHTML. For one page, on one thread. */
final class BlockXhtml implements BlockWriter {
  private final Markup out;
  private final Pictures pictures;
  private final Look look;
  private final InlineXhtml inlines;

  BlockXhtml(Markup out, Pictures pictures, Look look) {
    this.out = out;
    this.pictures = pictures;
    this.look = look;
    this.inlines = new InlineXhtml(out, pictures, look);
  }

  @Override
  public void heading(Block.Heading heading) {
    element("h" + heading.level(), heading.text());
  }

  @Override
  public void quote(Block.Quote quote) {
    out.open("blockquote");
    quote.blocks().forEach(block -> block.to(this));
    out.close("blockquote").line();
  }

  @Override
  public void verbatim(Block.Verbatim verbatim) {
    out.element("pre", verbatim.text()).line();
  }

  @Override
  public void rule(Block.Rule rule) {
    out.empty("hr").line();
  }

  @Override
  public void notice(Block.Notice notice) {
    element("p", notice.text(), "class", "notice");
  }

  @Override
  public void ticks(Block.TickList list) {
    new TickListXhtml(out, inlines).list(list);
  }

  /** The drawing stands in the page itself; in words where it is too large to be shown. */
  @Override
  public void drawing(Block.Drawing drawing) {
    String source = DrawnInPage.source(drawing.svg());
    pictures
        .find(source, look)
        .map(
            picture ->
                drawing.wholeSheet()
                    ? PictureSize.within(picture, TreeCard.WIDTH, TreeCard.HEIGHT)
                    : PictureSize.within(
                        picture, TreeDrawing.PAPER_WIDTH, TreeDrawing.PAPER_HEIGHT))
        .ifPresentOrElse(
            size ->
                out.open("p", "class", "picture")
                    .empty(
                        "img",
                        "src",
                        source,
                        "alt",
                        drawing.alt(),
                        "style",
                        "width: " + size.width() + "px; height: " + size.height() + "px")
                    .close("p")
                    .line(),
            () -> element("p", Inline.text(InlineReader.notShown(drawing.alt()))));
  }

  @Override
  public void forks(Block.Forks forks) {
    new ForksXhtml(out, inlines).forks(forks);
  }

  /** A paragraph with a picture is marked, so that it is not divided between two pages. */
  @Override
  public void paragraph(Block.Paragraph paragraph) {
    boolean picture = paragraph.text().stream().anyMatch(Inline.Picture.class::isInstance);
    if (picture) {
      element("p", paragraph.text(), "class", "picture");
    } else {
      element("p", paragraph.text());
    }
  }

  private void element(String name, List<Inline> text, String... attributes) {
    out.open(name, attributes);
    inlines.all(text);
    out.close(name).line();
  }

  @Override
  public void items(Block.Items items) {
    String list = items.numbered() ? "ol" : "ul";
    if (items.numbered() && items.start() != 1) {
      out.open(list, "start", Integer.toString(items.start()));
    } else {
      out.open(list);
    }
    out.line();
    for (List<Block> item : items.items()) {
      out.open("li");
      item(item, items.tight());
      out.close("li").line();
    }
    out.close(list).line();
  }

  /** In a tight list text stands in the item itself, so that its dot or number is beside it. */
  private void item(List<Block> item, boolean tight) {
    for (int i = 0; i < item.size(); i++) {
      if (tight && item.get(i) instanceof Block.Paragraph paragraph) {
        if (i == 0) {
          inlines.all(paragraph.text());
        } else {
          element("div", paragraph.text());
        }
      } else {
        item.get(i).to(this);
      }
    }
  }

  @Override
  public void table(Block.Table table) {
    out.open("table", "class", "grid").open("thead").open("tr");
    cells("th", table.head(), table.columns());
    out.close("tr").close("thead").open("tbody").line();
    for (List<List<Inline>> row : table.rows()) {
      out.open("tr");
      if (table.isHeading(row)) {
        out.open("td", "colspan", Integer.toString(table.columns().size()));
        inlines.all(row.get(0));
        out.close("td");
      } else {
        cells("td", row, table.columns());
      }
      out.close("tr").line();
    }
    if (table.rows().isEmpty()) {
      out.open("tr").empty("td").close("tr");
    }
    out.close("tbody").close("table").line();
  }

  private void cells(String name, List<List<Inline>> cells, List<Block.Side> columns) {
    for (int i = 0; i < cells.size(); i++) {
      out.open(name, "class", columns.get(i).name().toLowerCase(Locale.ROOT));
      inlines.all(cells.get(i));
      out.close(name);
    }
  }

  @Override
  public void caution(Block.CautionBox box) {
    out.open("div", "class", "caution").line();
    out.open("p", "class", "caution-title");
    box.question().ifPresent(asked -> out.text(asked + " If so: "));
    out.element("span", "Caution: ", "class", "word");
    title(box.title(), Xhtml.SHORT + box.id());
    if (!box.because().isEmpty()) {
      out.text(" (" + box.because() + ")");
    }
    out.close("p").line();
    out.element("p", box.danger(), "class", "danger").line();
    if (!box.act().isEmpty()) {
      out.open("ul").line();
      box.act().forEach(act -> out.element("li", act).line());
      out.close("ul").line();
    }
    if (!box.seek().isEmpty()) {
      out.element("p", box.seek(), "class", "seek").line();
    }
    out.close("div").line();
  }

  @Override
  public void shortCaution(Block.ShortCaution caution) {
    out.open("p", "class", "short-caution").open("span", "class", "caution-title");
    out.element("span", "Caution: ", "class", "word");
    title(caution.title(), Xhtml.FULL + caution.id());
    out.text(caution.at().isEmpty() ? ". " : " (" + caution.at() + "). ").close("span");
    out.text(Typography.joined(caution.danger() + " "));
    out.element("strong", Typography.joined(caution.rule())).close("p").line();
  }

  @Override
  public void foldedCautions(Block.FoldedCautions folded) {
    if (folded.more() && look != Look.PAPER) {
      out.open("p", "class", "whole-text").open("a", "href", Xhtml.READ).text("Read").close("a");
      out.text(" folds them to a line of their names; so does F8.").close("p").line();
    }
    if (folded.names().isEmpty()) {
      return;
    }
    out.open("p", "class", "short-caution").open("span", "class", "caution-title");
    out.element("span", folded.names().size() == 1 ? "Caution: " : "Cautions: ", "class", "word");
    String between = "";
    for (Inline.CautionName name : folded.names()) {
      out.text(between);
      title(name.title(), Xhtml.FULL + name.id());
      out.text(" (read)");
      between = "; ";
    }
    out.close("span").close("p").line();
  }

  /** A caution's title; on screen it leads from the two lines to the whole text, and back. */
  private void title(String title, String address) {
    if (look == Look.PAPER) {
      out.text(title);
    } else {
      out.open("a", "class", "caution-link", "href", address).text(title).close("a");
    }
  }

  @Override
  public void facts(Block.Facts facts) {
    out.open("table", "class", "facts").open("tbody").line();
    for (Block.Fact fact : facts.facts()) {
      out.open("tr").element("th", fact.name()).open("td");
      inlines.all(fact.value());
      out.close("td").close("tr").line();
    }
    out.close("tbody").close("table").line();
  }
}
