package limberboard.letters.next;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import limberboard.cases.NextPages.Hint;
import limberboard.library.file.FileBytes;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.WorkspaceFolders;
import limberboard.words.Sentences;

/**
 * The beginning of a page that is still to be written: its title, what people say for it, and why
 * it is wanted. What only an author knows is left out, so that no owner is shown it before it is
 * written: {@code validate} says what is missing. Stateless.
 */
public final class NewPage {
  private static final int LONGEST = 60;

  private NewPage() {}

  /** What its file is called, without ending. */
  public static String id(Hint hint) {
    String plain = hint.words().get(0).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String cut = plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("^-+|-+$", "");
    return cut.isEmpty() ? "new-page" : cut;
  }

  /** The beginning. */
  public static String text(Hint hint) {
    StringBuilder page = new StringBuilder("---\n");
    page.append("# ").append(oneLine(hint.evidence())).append(".\n");
    if (!hint.examples().isEmpty()) {
      page.append("# Letters: ").append(oneLine(String.join(", ", hint.examples()))).append(".\n");
    }
    page.append("# Still to be written: system, zones, causes, checks.\n");
    page.append("title: ").append(quoted(Sentences.capital(hint.words().get(0)))).append('\n');
    page.append("said-as:\n");
    hint.words().forEach(words -> page.append("  - ").append(quoted(words)).append('\n'));
    return page.append("---\n\n").toString();
  }

  /**
   * Writes the beginning among the symptoms' pages.
   *
   * @return the file
   * @throws IOException when it cannot be written, or such a page is there already
   */
  public static Path write(WorkspaceFolders folders, Hint hint) throws IOException {
    Path file = folders.articles().resolve("symptoms").resolve(id(hint) + ".md");
    if (!folders.holds(file)) {
      throw new IOException("the folder is a link that leads out of the workspace");
    }
    if (FileBytes.isThere(file)) {
      throw new IOException(folders.relative(file) + " is there already");
    }
    SafeFiles.write(file, text(hint).getBytes(StandardCharsets.UTF_8));
    return file;
  }

  private static String oneLine(String text) {
    return text.replaceAll("[\\p{Cc}\\u2028\\u2029]+", " ");
  }

  /** A YAML text in quotes, which nothing in a letter's subject can end. */
  private static String quoted(String text) {
    return '"' + oneLine(text).replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
