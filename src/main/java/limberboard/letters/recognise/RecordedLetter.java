package limberboard.letters.recognise;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterAsFile;
import limberboard.library.header.YamlTree;

/**
 * A letter with what it should give.
 *
 * @param name its file name without the ending
 * @param letter the letter
 * @param expected what it should give
 */
public record RecordedLetter(String name, Letter letter, Expected expected) {
  private static final String LETTER = ".eml";
  private static final String EXPECTED = ".yaml";

  /**
   * The letters of a folder that have what they should give beside them, by name. Nothing is learnt
   * from one that cannot be read.
   *
   * @return none where there is no such folder
   * @throws IOException when the folder cannot be read
   */
  public static List<RecordedLetter> read(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(LETTER)).sorted().toList();
    }
    List<RecordedLetter> read = new ArrayList<>();
    for (Path file : files) {
      String name = file.getFileName().toString().replace(LETTER, "");
      Path beside = file.resolveSibling(name + EXPECTED);
      if (Files.isRegularFile(beside)) {
        read(name, file, beside).ifPresent(read::add);
      }
    }
    return read;
  }

  private static Optional<RecordedLetter> read(String name, Path file, Path beside) {
    try {
      return Optional.of(new RecordedLetter(name, LetterAsFile.read(file), expected(beside)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Expected expected(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    return Expected.of(YamlTree.read(file.getFileName().toString(), text, 1).root());
  }
}
