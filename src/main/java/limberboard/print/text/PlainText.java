package limberboard.print.text;

import limberboard.print.page.CutPage;
import limberboard.print.page.Part;

/** Renders a cut page for a terminal: plain text, wrapped, cautions first. Stateless. */
public final class PlainText {
  private static final int NARROWEST = 40;

  /**
   * The page as lines.
   *
   * @param page the page
   * @param width of the terminal, in characters; less than 40 counts as 40
   */
  public String render(CutPage page, int width) {
    TextLines out = new TextLines(Math.max(NARROWEST, width));
    out.underlined(page.title(), '=');
    out.paragraph(page.summary());
    out.paragraph(page.cutFor());
    BlockText blocks = new BlockText(out);
    for (Part part : page.parts()) {
      if (!part.title().isEmpty()) {
        out.underlined(part.title(), '-');
      }
      part.blocks().forEach(block -> block.to(blocks));
      out.gap();
    }
    return out.toString();
  }
}
