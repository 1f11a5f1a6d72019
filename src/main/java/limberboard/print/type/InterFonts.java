package limberboard.print.type;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.UserFolders;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/**
 * The typeface Inter, from the library that carries it (SIL Open Font License 1.1). Java paints
 * with fonts that lie in a file: one copy is kept in a person's own cache folder, since the
 * temporary files that Java would make itself stay behind when the program is killed.
 */
public final class InterFonts {
  private static final String FOLDER = "com/formdev/flatlaf/fonts/inter/";
  private static final List<String> FILES =
      List.of(
          "Inter-Regular.otf",
          "Inter-Italic.otf",
          "Inter-SemiBold.otf",
          "Inter-SemiBoldItalic.otf",
          "Inter-Bold.otf",
          "Inter-BoldItalic.otf");
  private static final List<String> ON_SCREEN_ONLY =
      List.of("Inter-Light.otf", "Inter-LightItalic.otf");

  private InterFonts() {}

  /**
   * Makes Inter known to everything that paints letters, once. Where that is impossible, because
   * neither the cache nor the temporary folder can be written, letters are painted in what the
   * system has instead.
   */
  public static void registerForPainting() {
    Registered.ALL.size();
  }

  /** The files that could be registered; filled when it is first asked, and never again. */
  private static final class Registered {
    private static final List<String> ALL =
        java.util.stream.Stream.concat(FILES.stream(), ON_SCREEN_ONLY.stream())
            .filter(file -> register(file, UserFolders.here().cache().resolve("fonts")))
            .toList();
  }

  /** Registers a file by its copy in a folder; false when it cannot be done. */
  public static boolean register(String file, Path folder) {
    Optional<Path> copy = copy(file, folder);
    try {
      Font font =
          copy.isPresent()
              ? Font.createFont(Font.TRUETYPE_FONT, copy.get().toFile())
              : throughTemporaryFile(file);
      GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
      return true;
    } catch (IOException | FontFormatException e) {
      return false;
    }
  }

  /** The copy of a file in a folder, made where it is not there yet; empty where that fails. */
  static Optional<Path> copy(String file, Path folder) {
    URL own = InterFonts.class.getClassLoader().getResource(FOLDER + file);
    if (own == null) {
      return Optional.empty();
    }
    Path copy = folder.resolve(file);
    try {
      if (!Files.isRegularFile(copy)
          || Files.size(copy) != own.openConnection().getContentLengthLong()) {
        try (InputStream in = own.openStream()) {
          SafeFiles.write(copy, in.readAllBytes());
        }
      }
      return Optional.of(copy);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Font throughTemporaryFile(String file) throws IOException, FontFormatException {
    try (InputStream in = InterFonts.class.getClassLoader().getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IOException("the font " + file + " is missing from the program");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    }
  }

  /** Makes Inter known to a PDF renderer, which embeds what it uses of it. */
  public static void register(ITextFontResolver resolver) throws IOException {
    for (String file : FILES) {
      try {
        resolver.addFont(FOLDER + file, "Inter", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, null);
      } catch (DocumentException e) {
        throw new IOException("the font " + file + " cannot be embedded", e);
      }
    }
  }

  /** Whether a PDF can show a character. */
  static boolean shows(int codePoint) {
    return codePoint < ' ' || Regular.FONT.charExists(codePoint);
  }

  /** Read when it is first asked, and never again. */
  private static final class Regular {
    private static final BaseFont FONT = read();

    private static BaseFont read() {
      try {
        return BaseFont.createFont(FOLDER + FILES.get(0), BaseFont.IDENTITY_H, BaseFont.EMBEDDED);
      } catch (IOException | DocumentException e) {
        throw new IllegalStateException("the font is missing from the program", e);
      }
    }
  }
}
