package limberboard.print.xhtml;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.IntUnaryOperator;
import limberboard.print.drawing.Markup;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.type.PaperLetters;

/**
 * Renders a cut page as well-formed XHTML with the one style sheet in it, for the window and for
 * paper. On screen, links to pages have the address {@code page:} and the id; on paper there are
 * none. A caution's two lines and its whole text on the same page lead to each other ({@link
 * #FULL}, {@link #SHORT}). Pictures have their path relative to the workspace. Immutable; any
 * thread.
 */
public final class Xhtml {
  /** Before a page's id: its address. */
  public static final String PAGE = "page:";

  /** Before a caution's id: the address of its whole text on the same page. */
  public static final String FULL = "full:";

  /** Before a caution's id: the address of its two lines on the same page. */
  public static final String SHORT = "short:";

  /** The address by which somebody says that the cautions of the page have been read. */
  public static final String READ = "read:";

  private static final String WHOLE_TEXT =
      "The whole text of each: click its name, or press F7; F7 again leads back.";

  private final Pictures pictures;
  private final String styleSheet;
  private final String listStyle;
  private final String cardStyle;
  private final String treeStyle;

  /** Renders pages whose pictures are among these; others are replaced by their description. */
  public Xhtml(Pictures pictures) {
    this.pictures = pictures;
    this.styleSheet = styleSheet("page.css");
    this.listStyle = styleSheet("list.css");
    this.cardStyle = styleSheet("card.css");
    this.treeStyle = styleSheet("tree.css");
  }

  /** The page as a whole XHTML document. */
  public String render(CutPage page, Look look) {
    PaperLetters letters = new PaperLetters();
    IntUnaryOperator shown = look == Look.PAPER ? letters::shown : IntUnaryOperator.identity();
    String body = body(page, look, new Markup(shown));
    Markup out = new Markup();
    out.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>").line();
    out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "xml:lang", "en-GB").line();
    out.open("head").plainElement("title", page.title());
    out.open("style", "type", "text/css").raw(style(page)).close("style").close("head").line();
    out.open("body", "class", look.name().toLowerCase(Locale.ROOT)).line();
    out.raw(new Markup(shown).element("div", footer(page), "class", "footer").toString()).line();
    paragraph(out, "notice", letters.notice());
    out.raw(body).close("body").close("html").line();
    return out.toString();
  }

  private String body(CutPage page, Look look, Markup out) {
    out.open("div", "class", "page page-" + page.label() + " of-" + page.id()).line();
    out.element("p", page.label(), "class", "kind").line();
    out.element("h1", page.title()).line();
    paragraph(out, "summary", page.summary());
    paragraph(out, "cut-for", page.cutFor());
    BlockXhtml blocks = new BlockXhtml(out, pictures, look);
    for (Part part : page.parts()) {
      part(out, part, blocks, look);
    }
    return out.close("div").toString();
  }

  private static void part(Markup out, Part part, BlockXhtml blocks, Look look) {
    out.open(
            "div",
            "class",
            "part part-" + part.role().name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .line();
    if (!part.title().isEmpty()) {
      out.element("h2", part.title()).line();
    }
    part.blocks().forEach(block -> block.to(blocks));
    if (look != Look.PAPER
        && part.role() == Part.Role.CAUTIONS
        && part.blocks().stream().anyMatch(Block.ShortCaution.class::isInstance)) {
      out.element("p", WHOLE_TEXT, "class", "whole-text").line();
    }
    out.close("div").line();
  }

  private static void paragraph(Markup out, String name, String text) {
    if (!text.isEmpty()) {
      out.element("p", text, "class", name).line();
    }
  }

  private static String footer(CutPage page) {
    return page.cutFor().isEmpty() ? page.title() : page.title() + " · " + page.cutFor();
  }

  /**
   * Lists, trees and cards have narrower margins, which only a style sheet of their own can give
   * them.
   */
  private String style(CutPage page) {
    return switch (page.label()) {
      case CutPage.LIST -> styleSheet + listStyle;
      case CutPage.CARD -> styleSheet + cardStyle;
      case CutPage.TREE -> styleSheet + treeStyle;
      default -> styleSheet;
    };
  }

  private static String styleSheet(String name) {
    try (InputStream in = Xhtml.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
