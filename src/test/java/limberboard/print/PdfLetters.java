package limberboard.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * The letters of a PDF in the order in which they are written, without white space, read back with
 * another library than the one that wrote them.
 *
 * @param all the letters
 */
public record PdfLetters(List<Letter> all) {

  /**
   * A letter.
   *
   * @param text what it says, one character or more
   * @param sheet from 1
   * @param y from the sheet's upper edge to its foot, in points
   * @param size in points
   */
  public record Letter(String text, int sheet, double y, double size) {}

  /** The letters of a PDF file. */
  public static PdfLetters of(byte[] pdf) {
    try (PDDocument read = Loader.loadPDF(pdf)) {
      List<Letter> letters = new ArrayList<>();
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition position) {
          String text = dense(position.getUnicode());
          if (!text.isEmpty()) {
            letters.add(
                new Letter(
                    text, getCurrentPageNo(), position.getYDirAdj(), position.getFontSizeInPt()));
          }
        }
      }.getText(read);
      return new PdfLetters(letters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A text without its white space. */
  public static String dense(String text) {
    return text.replaceAll("[\\s\\u00A0\\u00AD\\u2007\\u202F]+", "");
  }

  /** The first letter of the first place at which a text stands. */
  public Optional<Letter> where(String text) {
    return where(text, "");
  }

  /** The first letter of the first place at which a text stands after another. */
  public Optional<Letter> where(String text, String after) {
    StringBuilder written = new StringBuilder();
    List<Letter> at = new ArrayList<>();
    for (Letter letter : all) {
      letter.text().chars().forEach(each -> at.add(letter));
      written.append(letter.text());
    }
    int from = written.indexOf(dense(after));
    int found = from < 0 ? -1 : written.indexOf(dense(text), from + dense(after).length());
    return found < 0 ? Optional.empty() : Optional.of(at.get(found));
  }
}
