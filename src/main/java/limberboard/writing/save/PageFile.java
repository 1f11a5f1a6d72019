package limberboard.writing.save;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.library.file.FileBytes;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.writing.PageText;

/**
 * The file of a page that is written. It is replaced whole or not at all, and never where somebody
 * else has changed it since it was opened.
 *
 * @param folders the workspace
 * @param path relative to the workspace, with {@code /}
 */
public record PageFile(WorkspaceFolders folders, String path) {
  /** What came of opening. */
  public sealed interface Opened {}

  /**
   * It can be written.
   *
   * @param page what it holds; empty when it is not there yet
   */
  public record Ready(Optional<PageText> page) implements Opened {}

  /**
   * It cannot be read, and so must not be written.
   *
   * @param problem why, and what to do
   */
  public record Unreadable(Problem problem) implements Opened {}

  private Path file() {
    return folders.root().resolve(path);
  }

  /** Opens it. */
  public Opened open() {
    if (!FileBytes.isThere(file())) {
      return new Ready(Optional.empty());
    }
    if (!folders.holds(file())) {
      return new Unreadable(
          Problem.error(
              path,
              0,
              "",
              "is a link that leads out of the workspace",
              "keep it as an ordinary file in its place"));
    }
    try {
      return new Ready(Optional.of(PageText.of(FileBytes.read(file(), TextFile.LARGEST))));
    } catch (CharacterCodingException e) {
      return new Unreadable(Problem.error(path, 0, "", "is not UTF-8 text", "save it as UTF-8"));
    } catch (FileBytes.Refused e) {
      return new Unreadable(Problem.error(path, 0, "", e.wrong(), e.right()));
    }
  }

  /**
   * Saves the page, if the file still holds what it held when it was opened, or holds what is to be
   * written already.
   *
   * @param opened what the file held; empty when it was not there
   * @param now what it is to hold
   */
  public SaveOutcome save(Optional<PageText> opened, PageText now) {
    try {
      Files.createDirectories(file().getParent());
    } catch (IOException e) {
      return new SaveOutcome.Refused(FileTrouble.notWritten(path, e));
    }
    return shared()
        .<SaveOutcome>change(there -> saved(opened, there, now), SaveOutcome.Refused::new);
  }

  private static Rewrite<SaveOutcome> saved(
      Optional<PageText> opened, Optional<String> there, PageText now) {
    Optional<PageText> theirs = there.map(PageText::new);
    if (theirs.equals(Optional.of(now))) {
      return Rewrite.leave(new SaveOutcome.Saved(now));
    }
    return theirs.equals(opened)
        ? Rewrite.write(Optional.of(now.text()), new SaveOutcome.Saved(now))
        : Rewrite.leave(
            new SaveOutcome.Changed(
                now, theirs, LineDifference.between(now, theirs.orElse(PageText.NONE))));
  }

  /**
   * Takes the file away, if it still holds what it held when it was opened.
   *
   * @param opened what the file held
   * @return the same outcomes as of saving; {@code Saved} says what was taken away
   */
  public SaveOutcome delete(PageText opened) {
    return shared()
        .<SaveOutcome>change(
            there -> {
              Optional<PageText> theirs = there.map(PageText::new);
              return theirs.isEmpty() || theirs.get().equals(opened)
                  ? Rewrite.write(Optional.empty(), new SaveOutcome.Saved(opened))
                  : Rewrite.leave(
                      new SaveOutcome.Changed(
                          PageText.NONE,
                          theirs,
                          LineDifference.between(PageText.NONE, theirs.get())));
            },
            SaveOutcome.Refused::new);
  }

  private SharedTextFile shared() {
    return new SharedTextFile(folders, file(), TextFile.LARGEST);
  }
}
