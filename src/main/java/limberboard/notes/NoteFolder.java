package limberboard.notes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * The quick notes of a workspace, one file each in {@code notes}, those that have ended in {@code
 * notes/done}. They belong to this desk, and are neither recorded nor shared. Not for the event
 * thread.
 *
 * @param folders the workspace
 */
public record NoteFolder(WorkspaceFolders folders) {
  private static final String FOLDER = "notes";
  private static final String DONE = "done";
  private static final String ENDING = ".md";
  private static final int MOST_A_DAY = 1000;
  private static final long MOST_BYTES = 20_000_000;

  private Path folder() {
    return folders.root().resolve(FOLDER);
  }

  private Path done() {
    return folder().resolve(DONE);
  }

  /** The notes that wait, the oldest first. */
  public List<QuickNote> waiting() throws IOException {
    Set<String> ended = in(done()).stream().map(QuickNote::id).collect(Collectors.toSet());
    return in(folder()).stream().filter(note -> !ended.contains(note.id())).toList();
  }

  /** The notes that have ended, the latest first. */
  public List<QuickNote> ended() throws IOException {
    List<QuickNote> all = new ArrayList<>(in(done()));
    all.sort(Comparator.comparing(QuickNote::id).reversed());
    return all;
  }

  private List<QuickNote> in(Path at) throws IOException {
    if (!Files.isDirectory(at)) {
      return List.of();
    }
    List<Path> files;
    try (Stream<Path> all = Files.list(at)) {
      files =
          all.filter(Files::isRegularFile)
              .filter(file -> file.getFileName().toString().endsWith(ENDING))
              .filter(file -> !file.getFileName().toString().startsWith("."))
              .toList();
    }
    return files.stream()
        .map(file -> NoteText.read(id(file), TextFile.read(folders, file, TextFile.LARGEST).text()))
        .sorted(Comparator.comparing(QuickNote::written).thenComparing(QuickNote::id))
        .toList();
  }

  private static String id(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - ENDING.length());
  }

  /** Where a note's photo lies. */
  public Optional<Path> picture(QuickNote note) {
    return note.picture().map(folder()::resolve).filter(Files::isRegularFile);
  }

  /**
   * Keeps a new note.
   *
   * @param written when
   * @param page the page it is about
   * @param boat the boat it is about
   * @param photo a photo, of which a copy is kept
   * @param text what is noted
   * @throws NoteTrouble when the photo is none, or nothing can be written; nothing is kept then
   */
  public QuickNote add(
      LocalDateTime written,
      Optional<String> page,
      Optional<String> boat,
      Optional<Path> photo,
      String text)
      throws IOException {
    Optional<String> ending =
        photo.isPresent() ? Optional.of(ending(photo.get())) : Optional.empty();
    Files.createDirectories(folder());
    for (int number = 1; number < MOST_A_DAY; number++) {
      String id = written.toLocalDate() + "-" + number;
      if (Files.exists(done().resolve(id + ENDING)) || Files.exists(file(id))) {
        continue;
      }
      QuickNote note =
          new QuickNote(
              id, written, page, boat, ending.map(end -> id + end), text, Optional.empty());
      if (photo.isPresent()) {
        SafeFiles.write(
            folder().resolve(note.picture().orElseThrow()), Files.readAllBytes(photo.get()));
      }
      if (write(file(id), NoteText.of(note), true)) {
        return note;
      }
    }
    throw new NoteTrouble("there are a thousand notes of this day", "work some of them in first");
  }

  private Path file(String id) {
    return folder().resolve(id + ENDING);
  }

  private static String ending(Path photo) throws IOException {
    String name = photo.getFileName().toString().toLowerCase(Locale.ROOT);
    String ending = name.substring(Math.max(0, name.lastIndexOf('.')));
    if (!Set.of(".jpg", ".jpeg", ".png").contains(ending)) {
      throw new NoteTrouble(photo.getFileName() + " is no photo", "take a JPEG or PNG file");
    }
    if (Files.size(photo) > MOST_BYTES) {
      throw new NoteTrouble(
          photo.getFileName() + " is larger than 20 MB", "take a smaller picture of it");
    }
    return ending;
  }

  /** Writes a file whole; of a new one, only where none is there. Whether it was written. */
  private boolean write(Path file, String text, boolean isNew) throws IOException {
    Object outcome =
        new SharedTextFile(folders, file, TextFile.LARGEST)
            .<Object>change(
                now ->
                    isNew && now.isPresent()
                        ? Rewrite.leave(false)
                        : Rewrite.write(Optional.of(text), true),
                problem -> problem);
    if (outcome instanceof Problem problem) {
      throw new NoteTrouble(problem.file() + " " + problem.wrong(), problem.right());
    }
    return Boolean.TRUE.equals(outcome);
  }

  /**
   * Ends a note: it goes to those that are done, with the day and how.
   *
   * @throws NoteTrouble when it cannot be written; it waits then as before
   */
  public void end(QuickNote note, LocalDate day, QuickNote.How how) throws IOException {
    Files.createDirectories(done());
    QuickNote ended = note.ended(Optional.of(new QuickNote.End(day, how)));
    write(done().resolve(note.id() + ENDING), NoteText.of(ended), false);
    Files.deleteIfExists(file(note.id()));
  }

  /** Lets a note that has ended wait again. */
  public void resume(QuickNote note) throws IOException {
    write(file(note.id()), NoteText.of(note.ended(Optional.empty())), false);
    Files.deleteIfExists(done().resolve(note.id() + ENDING));
  }
}
