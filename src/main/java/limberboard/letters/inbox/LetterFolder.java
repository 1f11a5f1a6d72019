package limberboard.letters.inbox;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterAsFile;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.MailReader;
import limberboard.library.file.FileBytes;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * The letters of a workspace: {@code NAME.eml} as mail programs save them, {@code NAME.txt} for
 * text that was pasted; and beside each, where there is something to note, {@code NAME.eml.state}.
 */
public final class LetterFolder {
  private static final int LARGEST_NOTE = 1_000_000;
  private static final int MOST_OF_A_NAME = 1_000;
  private static final int LONGEST_NAME = 60;
  private static final String STATE = ".state";

  private final WorkspaceFolders folders;

  /** The letters of this workspace. */
  public LetterFolder(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * A note, and what is wrong with its file.
   *
   * @param note the note, as far as it can be read
   * @param problem the first thing that is wrong; the note is then not changed
   */
  public record Noted(LetterNote note, Optional<Problem> problem) {}

  /**
   * The letters, the latest first as the folder tells it; none where there is no folder.
   *
   * @throws IOException when the folder cannot be read
   */
  public List<LetterFile> list() throws IOException {
    Path folder = folders.letters();
    if (!Files.isDirectory(folder) || !folders.holds(folder)) {
      return List.of();
    }
    List<Path> letters = new ArrayList<>();
    Set<String> notes = new HashSet<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.forEach(
          file -> {
            String name = file.getFileName().toString();
            if (name.endsWith(STATE)) {
              notes.add(name);
            } else if (LetterAsFile.isLetter(name)) {
              letters.add(file);
            }
          });
    }
    List<LetterFile> found = new ArrayList<>();
    for (Path file : letters) {
      String name = file.getFileName().toString();
      boolean noted = notes.contains(name + STATE);
      file(file, name, noted ? written(state(name)) : Optional.empty()).ifPresent(found::add);
    }
    found.sort(
        Comparator.comparing(LetterFile::changed).reversed().thenComparing(LetterFile::name));
    return found;
  }

  private static Optional<LetterFile> file(Path file, String name, Optional<Instant> noted) {
    try {
      BasicFileAttributes told = Files.readAttributes(file, BasicFileAttributes.class);
      return told.isDirectory()
          ? Optional.empty()
          : Optional.of(
              new LetterFile(name, told.size(), told.lastModifiedTime().toInstant(), noted));
    } catch (IOException e) {
      return Optional.of(new LetterFile(name, 0, Instant.EPOCH, noted));
    }
  }

  private static Optional<Instant> written(Path file) {
    try {
      return Optional.of(Files.getLastModifiedTime(file).toInstant());
    } catch (IOException e) {
      return Optional.of(Instant.EPOCH);
    }
  }

  /**
   * Reads the beginning of a letter and says what its head says.
   *
   * @throws IOException when it cannot be read
   */
  public LetterHead head(String name) throws IOException {
    return LetterAsFile.head(file(name));
  }

  /**
   * Reads a letter.
   *
   * @throws IOException when it cannot be read
   */
  public Letter read(String name) throws IOException {
    return LetterAsFile.read(file(name));
  }

  /**
   * What an attachment holds.
   *
   * @param number its number in the letter, from 1
   * @param most how many bytes are read at most
   * @return empty where the letter has no such attachment, or it is longer
   * @throws IOException when the letter cannot be read
   */
  public Optional<byte[]> attachment(String name, int number, int most) throws IOException {
    try (InputStream in = LetterAsFile.open(file(name))) {
      return LetterAsFile.isPasted(name)
          ? Optional.empty()
          : MailReader.attachment(in, number, most);
    }
  }

  private Path file(String name) throws IOException {
    Path file = folders.letters().resolve(name);
    if (!folders.holds(file)) {
      throw new IOException("it is a link that leads out of the workspace");
    }
    if (!Files.isRegularFile(file)) {
      throw new IOException("it is not an ordinary file");
    }
    return file;
  }

  /** What is noted of a letter. */
  public Noted note(String name) {
    Path file = state(name);
    if (!FileBytes.isThere(file)) {
      return new Noted(LetterNote.NEW, Optional.empty());
    }
    TextFile.Result text = TextFile.read(folders, file, LARGEST_NOTE);
    if (!text.problems().isEmpty()) {
      return new Noted(LetterNote.NEW, text.problems().stream().findFirst());
    }
    LetterNoteReader.Read read = LetterNoteReader.read(folders.relative(file), text.text());
    return new Noted(read.note(), read.problems().stream().findFirst());
  }

  private Path state(String name) {
    return folders.letters().resolve(name + STATE);
  }

  /**
   * Changes what is noted of a letter, from what its file holds at that moment. A file that is
   * damaged is left as it is.
   *
   * @return why it could not be changed; empty when it was
   */
  public Optional<Problem> change(String name, UnaryOperator<LetterNote> change) {
    Path file = state(name);
    return new SharedTextFile(folders, file, LARGEST_NOTE)
        .<Optional<Problem>>change(
            now -> {
              LetterNoteReader.Read before =
                  LetterNoteReader.read(folders.relative(file), now.orElse(""));
              return before.problems().isEmpty()
                  ? written(file, now, change.apply(before.note()))
                  : Rewrite.leave(before.problems().stream().findFirst());
            },
            Optional::of);
  }

  /** What is written is read again first, so that nothing is kept that could not be read. */
  private Rewrite<Optional<Problem>> written(Path file, Optional<String> now, LetterNote note) {
    String text = LetterNoteText.of(note);
    LetterNoteReader.Read again = LetterNoteReader.read(folders.relative(file), text);
    if (!again.problems().isEmpty() || !again.note().equals(note)) {
      return Rewrite.leave(
          Optional.of(
              Problem.error(
                  folders.relative(file),
                  0,
                  "",
                  "cannot hold so long an answer",
                  "make its edited pieces shorter; nothing was written")));
    }
    return now.equals(Optional.of(text))
        ? Rewrite.leave(Optional.empty())
        : Rewrite.write(Optional.of(text), Optional.empty());
  }

  /**
   * Puts a letter into the folder under a name that is free. One that lies there already with the
   * same bytes is not put there twice.
   *
   * @param suggested a name; what is no plain letter in it becomes a hyphen
   * @param bytes the letter
   * @return its name
   * @throws IOException when it cannot be written
   */
  public String add(String suggested, byte[] bytes) throws IOException {
    boolean pasted = LetterAsFile.isPasted(suggested);
    String ending = pasted ? LetterAsFile.PASTED : LetterAsFile.MAIL;
    String plain =
        suggested
            .toLowerCase(Locale.ROOT)
            .replaceFirst("\\.(eml|txt)$", "")
            .replaceAll("[^\\p{L}\\p{N}]+", "-")
            .replaceAll("^-+|-+$", "");
    String begins =
        plain.isEmpty() ? "letter" : plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
    for (int n = 1; n <= MOST_OF_A_NAME; n++) {
      String name = (n == 1 ? begins : begins + "-" + n) + ending;
      Path file = folders.letters().resolve(name);
      if (!FileBytes.isThere(file)) {
        SafeFiles.write(file, bytes);
        return name;
      }
      if (Files.isRegularFile(file)
          && Files.size(file) == bytes.length
          && java.util.Arrays.equals(Files.readAllBytes(file), bytes)) {
        return name;
      }
    }
    throw new IOException("a thousand letters are called " + begins);
  }
}
