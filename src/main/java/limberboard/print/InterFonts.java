package limberboard.print;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/** The typeface Inter, from the library that carries it (SIL Open Font License 1.1). */
final class InterFonts {
  private static final String FOLDER = "com/formdev/flatlaf/fonts/inter/";
  private static final List<String> FILES =
      List.of(
          "Inter-Regular.otf",
          "Inter-Italic.otf",
          "Inter-SemiBold.otf",
          "Inter-SemiBoldItalic.otf",
          "Inter-Bold.otf",
          "Inter-BoldItalic.otf");

  private InterFonts() {}

  /** Makes Inter known to everything that paints letters, once. */
  static void registerForPainting() {
    if (!Registered.ALL) {
      throw new IllegalStateException("the program's fonts could not be registered");
    }
  }

  /** Registers when it is first asked, and never again. */
  private static final class Registered {
    private static final boolean ALL = register();

    private static boolean register() {
      for (String file : FILES) {
        try (InputStream in =
            InterFonts.class.getClassLoader().getResourceAsStream(FOLDER + file)) {
          if (in == null) {
            return false;
          }
          GraphicsEnvironment.getLocalGraphicsEnvironment()
              .registerFont(Font.createFont(Font.TRUETYPE_FONT, in));
        } catch (IOException | FontFormatException e) {
          return false;
        }
      }
      return true;
    }
  }

  /** Makes Inter known to a PDF renderer, which embeds what it uses of it. */
  static void register(ITextFontResolver resolver) throws IOException {
    for (String file : FILES) {
      try {
        resolver.addFont(FOLDER + file, "Inter", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, null);
      } catch (DocumentException e) {
        throw new IOException("the font " + file + " cannot be embedded", e);
      }
    }
  }
}
