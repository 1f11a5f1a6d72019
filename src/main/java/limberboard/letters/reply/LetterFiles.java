package limberboard.letters.reply;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.letters.mail.LetterAsFile;

/** The letters of a folder among which a conversation is looked for. Stateless. */
public final class LetterFiles {
  private LetterFiles() {}

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
        kept.add(new KeptLetter(file.getFileName().toString(), LetterAsFile.read(file)));
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
      return all.filter(file -> LetterAsFile.isMail(file.toString()))
          .filter(Files::isRegularFile)
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }
}
