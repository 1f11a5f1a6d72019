package limberboard.library.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.library.problem.Problem;

/**
 * A text file of the workspace that several people and programs write. It is changed under a lock:
 * what stands in it is read again, the change is made to that, and the whole is written safely. A
 * file that cannot be read is never overwritten.
 *
 * @param folders the workspace
 * @param file the file
 * @param largest how many bytes it may have
 */
public record SharedTextFile(WorkspaceFolders folders, Path file, int largest) {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  /**
   * A change to the file.
   *
   * @param <T> what comes of it
   */
  public interface Edit<T> {
    /**
     * What the file is to hold.
     *
     * @param now what it holds, to the letter, with line ends and byte-order mark; empty when it is
     *     not there
     */
    Rewrite<T> apply(Optional<String> now);

    /** What comes of it when the file cannot be read or written; it is then as it was. */
    T refused(Problem problem);
  }

  /**
   * What is to become of the file.
   *
   * @param text what it is to hold; empty when it is not to be there
   * @param changed whether anything is to be written at all
   * @param outcome what comes of it
   */
  public record Rewrite<T>(Optional<String> text, boolean changed, T outcome) {
    /** Leaves the file as it is. */
    public static <T> Rewrite<T> leave(T outcome) {
      return new Rewrite<>(Optional.empty(), false, outcome);
    }

    /** Writes a text; none takes the file away. */
    public static <T> Rewrite<T> write(Optional<String> text, T outcome) {
      return new Rewrite<>(text, true, outcome);
    }
  }

  /**
   * Changes the file. Its folder must be there.
   *
   * @return what came of the change
   */
  public <T> T change(Edit<T> edit) {
    String name = folders.relative(file);
    if (!folders.holds(file)) {
      return edit.refused(
          Problem.error(
              name,
              0,
              "",
              "is a link that leads out of the workspace",
              "keep it as an ordinary file in its place; nothing was written"));
    }
    try {
      Path target = SafeFiles.target(file);
      WriteLock lock = WriteLock.take(target, PATIENCE);
      try {
        SafeFiles.clean(target);
        return locked(target, name, edit);
      } finally {
        lock.release();
      }
    } catch (IOException e) {
      return edit.refused(FileTrouble.notWritten(name, e));
    }
  }

  /**
   * The same from two functions.
   *
   * @param edit as {@link Edit#apply}
   * @param refused as {@link Edit#refused}
   */
  public <T> T change(Function<Optional<String>, Rewrite<T>> edit, Function<Problem, T> refused) {
    return change(
        new Edit<T>() {
          @Override
          public Rewrite<T> apply(Optional<String> now) {
            return edit.apply(now);
          }

          @Override
          public T refused(Problem problem) {
            return refused.apply(problem);
          }
        });
  }

  /**
   * Puts another text into the place of the file's.
   *
   * @param now what the file is to hold instead of what it holds; empty where it is to be left
   *     alone
   * @param left what is then wrong, if anything
   * @return why it was not changed; empty where it was, and where leaving it is right
   */
  public Optional<Problem> edit(
      Function<String, Optional<String>> now, Supplier<Optional<Problem>> left) {
    return change(
        text ->
            text.flatMap(now)
                .map(
                    other -> Rewrite.<Optional<Problem>>write(Optional.of(other), Optional.empty()))
                .orElseGet(() -> Rewrite.leave(left.get())),
        Optional::of);
  }

  private <T> T locked(Path target, String name, Edit<T> edit) throws IOException {
    Rewrite<T> rewrite = edit.apply(text(target));
    if (!rewrite.changed()) {
      return rewrite.outcome();
    }
    if (rewrite.text().isEmpty()) {
      Files.deleteIfExists(target);
      SafeFiles.syncFolder(target.getParent());
      return rewrite.outcome();
    }
    byte[] bytes = rewrite.text().get().getBytes(StandardCharsets.UTF_8);
    if (bytes.length > largest) {
      return edit.refused(
          Problem.error(
              name,
              0,
              "",
              "would be longer than the " + largest + " bytes that are read",
              "move old lines into a file of another name; nothing was written"));
    }
    SafeFiles.write(target, bytes);
    return rewrite.outcome();
  }

  private Optional<String> text(Path target) throws IOException {
    if (!FileBytes.isThere(target)) {
      return Optional.empty();
    }
    byte[] bytes = FileBytes.read(target, largest);
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      throw new IOException("it is not UTF-8 text", e);
    }
  }
}
