package limberboard.letters.mail;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Letters as files: {@code NAME.eml} as mail programs save them, {@code NAME.txt} for text that was
 * pasted. The only place that opens one. Stateless.
 */
public final class LetterAsFile {
  /** How the name of a mail ends. */
  public static final String MAIL = ".eml";

  /** How the name of text that was pasted ends. */
  public static final String PASTED = ".txt";

  /** The longest letter that is taken, in bytes. */
  public static final int LARGEST = 100_000_000;

  private static final int HEAD = 64_000;

  private LetterAsFile() {}

  /** Whether a file's name is one of a letter. */
  public static boolean isLetter(String name) {
    return !name.startsWith(".") && (isMail(name) || isPasted(name));
  }

  /** Whether a file's name is one of a mail. */
  public static boolean isMail(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(MAIL);
  }

  /** Whether a file's name is one of text that was pasted. */
  public static boolean isPasted(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(PASTED);
  }

  /**
   * Reads a letter.
   *
   * @throws IOException when it cannot be read or is longer than {@link #LARGEST}
   */
  public static Letter read(Path file) throws IOException {
    try (InputStream in = open(file)) {
      return isPasted(file.toString())
          ? MailReader.pasted(new String(in.readNBytes(LARGEST), StandardCharsets.UTF_8))
          : MailReader.read(in);
    }
  }

  /**
   * Reads the beginning of a letter and says what its head says.
   *
   * @throws IOException when it cannot be read
   */
  public static LetterHead head(Path file) throws IOException {
    if (isPasted(file.toString())) {
      return LetterHead.NONE;
    }
    try (InputStream in = open(file)) {
      return MailReader.read(new ByteArrayInputStream(in.readNBytes(HEAD))).head();
    }
  }

  /**
   * Opens a letter, for whoever reads something else of it.
   *
   * @throws IOException when it cannot be read or is longer than {@link #LARGEST}
   */
  public static InputStream open(Path file) throws IOException {
    if (Files.isRegularFile(file) && Files.size(file) > LARGEST) {
      throw new IOException("it is longer than " + LARGEST / 1_000_000 + " MB");
    }
    return Files.newInputStream(file);
  }
}
