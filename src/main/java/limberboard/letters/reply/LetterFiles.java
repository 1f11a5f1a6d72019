package limberboard.letters.reply;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.MailReader;

/** Letters as files: {@code .eml}, or {@code .txt} for text that was pasted. Stateless. */
public final class LetterFiles {
  private static final String MAIL = ".eml";
  private static final String PASTED = ".txt";

  private LetterFiles() {}

  /**
   * A letter.
   *
   * @throws IOException when it cannot be read
   */
  public static Letter letter(Path file) throws IOException {
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(PASTED)) {
      return MailReader.pasted(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
    }
    try (InputStream in = Files.newInputStream(file)) {
      return MailReader.read(in);
    }
  }

  /**
   * The mail of a folder by name, without what lies in folders below it. What cannot be read is
   * left out: a conversation goes on without it.
   *
   * @return none where there is no such folder
   */
  public static List<KeptLetter> mail(Path folder) {
    List<KeptLetter> kept = new ArrayList<>();
    for (Path file : files(folder)) {
      try {
        kept.add(new KeptLetter(file.getFileName().toString(), letter(file)));
      } catch (IOException e) {
        continue;
      }
    }
    return List.copyOf(kept);
  }

  private static List<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(MAIL))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
