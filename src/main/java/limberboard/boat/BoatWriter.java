package limberboard.boat;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Edit;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.problem.Problem;

/**
 * Writes boats' {@code boat.yaml}. Only the keys that were changed are touched: comments, unknown
 * keys, order, quotes and line ends of the rest stay to the letter. What others wrote into the file
 * meanwhile stays too; where they changed the same, nothing is written and both are told. The log
 * is left alone.
 *
 * <p>Can be used by any number of threads.
 */
public final class BoatWriter {
  private static final String MARK = "\uFEFF";

  private final WorkspaceFolders folders;
  private final HeaderBinder binder = new HeaderBinder();

  /** A writer for this workspace. */
  public BoatWriter(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /** What came of saving. */
  public sealed interface Outcome {}

  /**
   * The file says the boat now.
   *
   * @param boat the boat as the file has it, with what others changed in it meanwhile
   */
  public record Saved(Boat boat) implements Outcome {}

  /**
   * Nothing was written, because somebody else changed the same meanwhile.
   *
   * @param theirs the boat as the file has it now
   * @param merged the boat with both changes, and with the caller's where both changed the same; it
   *     can be saved with {@code theirs} as what it was made from
   * @param keys what both changed, such as {@code name} or {@code equipment.stove}
   */
  public record Clash(Boat theirs, Boat merged, List<String> keys) implements Outcome {}

  /**
   * Nothing was written.
   *
   * @param problem why, and what to do
   */
  public record Refused(Problem problem) implements Outcome {}

  /**
   * Saves changes to a boat.
   *
   * @param library its models
   * @param base the boat from which the changes were begun
   * @param wanted the boat with the changes
   */
  public Outcome save(Library library, Boat base, Boat wanted) {
    Path file = file(wanted.id());
    String name = folders.relative(file);
    return new SharedTextFile(folders, file, TextFile.LARGEST)
        .change(
            new Saving() {
              @Override
              public Rewrite<Outcome> apply(Optional<String> now) {
                return now.isPresent()
                    ? changed(library, name, now.get(), base, wanted)
                    : Rewrite.leave(gone(name));
              }
            });
  }

  private abstract static class Saving implements Edit<Outcome> {
    @Override
    public Outcome refused(Problem problem) {
      return new Refused(problem);
    }
  }

  private static Outcome gone(String name) {
    return new Refused(
        Problem.error(
            name,
            0,
            "",
            "is not there any more",
            "look whether the boat’s folder was renamed or taken away; nothing was written"));
  }

  private Rewrite<Outcome> changed(
      Library library, String name, String now, Boat base, Boat wanted) {
    String mark = now.startsWith(MARK) ? MARK : "";
    String text = now.substring(mark.length());
    BoatText.Read read = read(library, wanted.id(), name, text);
    if (read.boat().isEmpty()) {
      return Rewrite.leave(new Refused(unreadable(name, read.problems())));
    }
    BoatMerge merge = BoatMerge.of(base, wanted, read.boat().get());
    if (!merge.clashes().isEmpty()) {
      return Rewrite.leave(new Clash(read.boat().get(), merge.merged(), merge.clashes()));
    }
    Boat goal = merge.merged().with(wanted.log());
    if (goal.with(List.of()).equals(read.boat().get())) {
      return Rewrite.leave(new Saved(goal));
    }
    return made(text, read.boat().get(), goal)
        .filter(made -> says(library, name, made, read, goal))
        .map(made -> Rewrite.<Outcome>write(Optional.of(mark + made), new Saved(goal)))
        .orElseGet(() -> Rewrite.leave(new Refused(unchangeable(name))));
  }

  private static Optional<String> made(String text, Boat was, Boat goal) {
    try {
      return Optional.of(new BoatEdit(text, was, goal).made());
    } catch (Unchangeable e) {
      return Optional.empty();
    }
  }

  /** Whether a text, read again, says the boat and brings no mistake that was not there. */
  private boolean says(Library library, String name, String text, BoatText.Read before, Boat goal) {
    BoatText.Read again = read(library, goal.id(), name, text);
    List<String> known = before.problems().stream().map(BoatWriter::wrong).toList();
    return again.boat().equals(Optional.of(goal.with(List.of())))
        && again.problems().stream().map(BoatWriter::wrong).allMatch(known::contains);
  }

  private static String wrong(Problem problem) {
    return problem.key() + " " + problem.wrong();
  }

  private BoatText.Read read(Library library, String id, String name, String text) {
    return new BoatText(library, binder).read(id, name, text.replace("\r\n", "\n"));
  }

  private static Problem unreadable(String name, List<Problem> problems) {
    Problem first = problems.get(0);
    return Problem.error(
        name,
        first.line(),
        first.key(),
        "cannot be read: " + first.wrong(),
        "mend that by hand first, so that nothing in it is lost; nothing was written");
  }

  private static Problem unchangeable(String name) {
    return Problem.error(
        name,
        0,
        "",
        "is written in a way in which this cannot be changed without changing more",
        "change it by hand; nothing was written");
  }

  /**
   * Writes a new boat into a folder of its own; nothing that is there already is touched.
   *
   * @param library its models
   * @param wanted the boat; where its id is taken, the next one that is free is used
   */
  public Outcome create(Library library, Boat wanted) {
    String name = folders.relative(file(wanted.id()));
    String text = BoatEdit.text(wanted);
    BoatText.Read read = read(library, wanted.id(), name, text);
    Boat plain = wanted.with(List.of());
    if (!read.problems().isEmpty() || !read.boat().equals(Optional.of(plain))) {
      String wrong = read.problems().stream().map(Problem::wrong).findFirst().orElse("");
      return new Refused(
          Problem.error(
              name,
              0,
              read.problems().stream().map(Problem::key).findFirst().orElse(""),
              wrong.isEmpty() ? "would not be read again as it is meant" : wrong,
              "change that; nothing was written"));
    }
    try {
      Files.createDirectories(folders.boats());
      Boat free = plain.named(freeFolder(wanted.id()));
      Outcome outcome = first(free, text);
      if (outcome instanceof Refused) {
        Files.deleteIfExists(file(free.id()).getParent());
      }
      return outcome;
    } catch (IOException e) {
      return new Refused(FileTrouble.notWritten(name, e));
    }
  }

  /** Makes a folder for a new boat; making it is what takes its name. */
  private String freeFolder(String wanted) throws IOException {
    String id = wanted;
    for (int n = 2; ; n++) {
      try {
        Files.createDirectory(folders.boats().resolve(id));
        return id;
      } catch (FileAlreadyExistsException e) {
        id = wanted + "-" + n;
      }
    }
  }

  private Outcome first(Boat boat, String text) {
    return new SharedTextFile(folders, file(boat.id()), TextFile.LARGEST)
        .change(
            new Saving() {
              @Override
              public Rewrite<Outcome> apply(Optional<String> now) {
                return Rewrite.write(Optional.of(text), new Saved(boat));
              }
            });
  }

  private Path file(String boat) {
    return folders.boats().resolve(boat).resolve(BoatReader.BOAT);
  }
}
