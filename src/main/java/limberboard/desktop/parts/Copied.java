package limberboard.desktop.parts;

import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.List;

/**
 * Text for other programs, plain and as HTML; each takes what it can use. Immutable.
 *
 * @param plain the text with line breaks, marks of lists, and tabs between the cells of a row
 * @param html the same with its structure
 */
public record Copied(String plain, String html) implements Transferable {
  private static final List<DataFlavor> FLAVOURS =
      List.of(DataFlavor.allHtmlFlavor, DataFlavor.stringFlavor);

  /** Plain text, each line of which is a paragraph. */
  public static Copied of(String plain) {
    StringBuilder html = new StringBuilder();
    plain.lines().forEach(line -> html.append("<p>").append(escaped(line)).append("</p>"));
    return new Copied(plain, document(html.toString()));
  }

  /** A whole HTML document with this body. */
  public static String document(String body) {
    return "<html><head><meta charset=\"UTF-8\"></head><body>" + body + "</body></html>";
  }

  /** Text as it may stand in HTML. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  /** Puts it where other programs find it; for the event thread. */
  public void toClipboard() {
    try {
      Toolkit.getDefaultToolkit().getSystemClipboard().setContents(this, null);
    } catch (IllegalStateException e) {
      Toolkit.getDefaultToolkit().beep(); // another program holds it at this moment
    }
  }

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return FLAVOURS.toArray(DataFlavor[]::new);
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavour) {
    return FLAVOURS.contains(flavour);
  }

  @Override
  public Object getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
    if (flavour.equals(DataFlavor.stringFlavor)) {
      return plain;
    } else if (flavour.equals(DataFlavor.allHtmlFlavor)) {
      return html;
    }
    throw new UnsupportedFlavorException(flavour);
  }
}
