package limberboard.boat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * Writes boats' logs (RFC 4180): adds entries at the end, corrects one, takes one out, and takes
 * any of that back. Each change is made under a lock to what the file holds at that moment, so that
 * several people and programs can write one log and no line is lost. Every other line stays as it
 * is, to the letter; a log that cannot be read is left alone and the reason returned. A new column
 * is added only when an entry needs it.
 *
 * <p>Entries are told apart by what they say. Of equal lines the one is meant that ends on the
 * entry's {@link LogEntry#line()}, otherwise the last of them.
 *
 * <p>Can be used by any number of threads.
 */
public final class LogWriter {
  /** How many bytes a log may have. */
  public static final int LARGEST = 8_000_000;

  private final WorkspaceFolders folders;

  /** The logs of this workspace. */
  public LogWriter(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /** What came of writing. */
  public sealed interface Outcome {}

  /**
   * It was written.
   *
   * @param change what was changed, with which it can be taken back
   */
  public record Written(LogChange change) implements Outcome {
    /** The first entry that was written, otherwise the first that was taken out. */
    public LogEntry entry() {
      return change.put().isEmpty() ? change.taken().get(0) : change.put().get(0);
    }
  }

  /**
   * Nothing was written.
   *
   * @param problem why, and what to do
   */
  public record Refused(Problem problem) implements Outcome {}

  /**
   * Adds an entry at the end of a boat's log.
   *
   * @param boat the boat's id
   */
  public Outcome add(String boat, LogEntry entry) {
    return add(boat, List.of(entry));
  }

  /**
   * Adds entries at the end of a boat's log, all of them or none. The log is made if it is not
   * there.
   *
   * @param boat the boat's id
   * @param entries at least one
   */
  public Outcome add(String boat, List<LogEntry> entries) {
    return change(boat, List.of(), entries);
  }

  /**
   * Corrects an entry: its line is written anew in its place.
   *
   * @param boat the boat's id
   */
  public Outcome replace(String boat, LogEntry old, LogEntry now) {
    return change(boat, List.of(old), List.of(now));
  }

  /**
   * Takes an entry out.
   *
   * @param boat the boat's id
   */
  public Outcome remove(String boat, LogEntry entry) {
    return change(boat, List.of(entry), List.of());
  }

  /**
   * Takes entries out, all of them or none.
   *
   * @param boat the boat's id
   * @param entries at least one
   */
  public Outcome remove(String boat, List<LogEntry> entries) {
    return change(boat, entries, List.of());
  }

  /**
   * Takes a change back. While the log is as the change left it, it is then as it was before, to
   * the letter; when others have written meanwhile, only the change's own lines are taken back.
   *
   * @return what was changed by that; it can be taken back like any other change
   */
  public Outcome undo(LogChange change) {
    LogChange back = change.back();
    return kept(back.boat(), now -> now.equals(back.before()) ? exactly(back) : again(back, now));
  }

  /** Makes a change again that was taken back. */
  public Outcome redo(LogChange change) {
    return undo(change.back());
  }

  private Outcome change(String boat, List<LogEntry> taken, List<LogEntry> put) {
    return kept(boat, now -> edited(boat, now, taken, put, List.of()));
  }

  private static Rewrite<Outcome> exactly(LogChange back) {
    return Rewrite.write(back.after(), new Written(back));
  }

  /** Makes a change in a log that is not as it was, with the letters its lines had. */
  private Rewrite<Outcome> again(LogChange change, Optional<String> now) {
    LogText known = LogText.read(change.after().orElse(LogText.NEW));
    LogText is = LogText.read(now.orElse(LogText.NEW));
    boolean sameColumns = is.columns().equals(known.columns());
    List<Optional<String>> letters = new ArrayList<>();
    List<Integer> used = new ArrayList<>();
    for (LogEntry entry : change.put()) {
      OptionalInt place = sameColumns ? known.place(entry, used) : OptionalInt.empty();
      place.ifPresent(used::add);
      letters.add(
          place.isPresent()
              ? Optional.of(known.letters(known.lines().get(place.getAsInt())))
              : Optional.empty());
    }
    return edited(change.boat(), now, change.taken(), change.put(), letters);
  }

  private Rewrite<Outcome> edited(
      String boat,
      Optional<String> now,
      List<LogEntry> taken,
      List<LogEntry> put,
      List<Optional<String>> letters) {
    LogEdit edit = new LogEdit(folders.relative(file(boat)), LogText.read(now.orElse(LogText.NEW)));
    LogEdit.Made made = edit.swap(taken, put, letters);
    if (made instanceof LogEdit.Text text) {
      Optional<String> after = Optional.of(text.text());
      LogChange change = new LogChange(boat, text.taken(), text.put(), now, after);
      return Rewrite.write(after, new Written(change));
    }
    return Rewrite.leave(new Refused(((LogEdit.Not) made).problem()));
  }

  private Outcome kept(String boat, Function<Optional<String>, Rewrite<Outcome>> edit) {
    Path file = file(boat);
    if (!Files.isDirectory(file.getParent())) {
      return new Refused(
          Problem.error(
              folders.relative(file),
              0,
              "",
              "cannot be written, because the boat’s folder is not there",
              "look whether it was moved or renamed; nothing was written"));
    }
    return new SharedTextFile(folders, file, LARGEST).change(edit, Refused::new);
  }

  private Path file(String boat) {
    return folders.boats().resolve(boat).resolve(BoatReader.LOG);
  }
}
