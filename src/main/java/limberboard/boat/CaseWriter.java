package limberboard.boat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import limberboard.library.Library;
import limberboard.library.file.FileTrouble;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.problem.Problem;

/**
 * Writes recorded cases, one file each: {@code DATE-symptom.yaml}, and {@code DATE-symptom-2.yaml}
 * where that is taken. A file that is there is never overwritten; a case is completed under a lock
 * from what its file holds at that moment, and only the keys that change are touched. What is
 * written is read again first, so that nothing is kept that could not be read.
 *
 * <p>Can be used by any number of threads.
 */
public final class CaseWriter {
  /** How many cases of one symptom may be settled on one day. */
  static final int MOST_OF_A_DAY = 1000;

  private final WorkspaceFolders folders;
  private final HeaderBinder binder = new HeaderBinder();

  /** A writer for this workspace. */
  public CaseWriter(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /** What came of writing. */
  public sealed interface Outcome {}

  /**
   * It was written.
   *
   * @param recorded the case as its file has it now
   * @param file its file, relative to the workspace
   * @param before what the file held, to the letter; empty when it was not there
   * @param after what it holds now; empty when it was taken away
   */
  public record Written(
      RecordedCase recorded, String file, Optional<String> before, Optional<String> after)
      implements Outcome {}

  /**
   * Nothing was written.
   *
   * @param problem why, and what to do
   */
  public record Refused(Problem problem) implements Outcome {}

  /**
   * Writes a new case.
   *
   * @param library the pages that it names
   * @param wanted the case; its id is not looked at, it comes from its day and symptom
   */
  public Outcome create(Library library, RecordedCase wanted) {
    String begins = LogDay.write(wanted.date()) + "-" + wanted.symptom();
    Optional<Outcome> noFolder = noFolder(file(begins));
    if (noFolder.isPresent()) {
      return noFolder.get();
    }
    for (int n = 1; n <= MOST_OF_A_DAY; n++) {
      String id = n == 1 ? begins : begins + "-" + n;
      if (Files.exists(file(id))) {
        continue;
      }
      Optional<Outcome> outcome = create(library, id, wanted.named(id));
      if (outcome.isPresent()) {
        return outcome.get();
      }
    }
    return refused(file(begins), "has a thousand others beside it", "name another day");
  }

  /**
   * Writes a case under its own id. One that says the same already stays as it is, with {@code
   * before} as what its file holds; one that says something else is left alone.
   */
  public Outcome keep(Library library, RecordedCase wanted) {
    Path file = file(wanted.id());
    String text = CaseText.of(wanted);
    Optional<Outcome> noFolder = noFolder(file);
    if (noFolder.isPresent()) {
      return noFolder.get();
    }
    return create(library, wanted.id(), wanted)
        .orElseGet(
            () ->
                kept(
                    file,
                    now ->
                        Rewrite.leave(
                            now.equals(Optional.of(text))
                                ? new Written(wanted, folders.relative(file), now, now)
                                : refused(
                                    file,
                                    "is there already and says something else",
                                    "move it away or choose another name"))));
  }

  /** Writes a case under a name; empty when somebody else has just taken it. */
  private Optional<Outcome> create(Library library, String id, RecordedCase wanted) {
    Path file = file(id);
    if (isElsewhere(file)) {
      return Optional.of(
          refused(file, "would lie outside the folder of cases", "name a symptom of the pages"));
    }
    String text = CaseText.of(wanted);
    Optional<Problem> problem = says(library, file, text, wanted);
    if (problem.isPresent()) {
      return problem.map(Refused::new);
    }
    Optional<String> after = Optional.of(text);
    return new SharedTextFile(folders, file, TextFile.LARGEST)
        .change(
            now ->
                now.isPresent()
                    ? Rewrite.leave(Optional.empty())
                    : Rewrite.write(
                        after,
                        Optional.of(new Written(wanted, folders.relative(file), now, after))),
            why -> Optional.of(new Refused(why)));
  }

  /** Makes the folder of cases; why it cannot be made, if so. */
  private Optional<Outcome> noFolder(Path file) {
    try {
      Files.createDirectories(folders.cases());
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(new Refused(FileTrouble.notWritten(folders.relative(file), e)));
    }
  }

  private boolean isElsewhere(Path file) {
    return !folders.cases().normalize().equals(file.normalize().getParent());
  }

  /**
   * Completes a case, or corrects it.
   *
   * @param library the pages that it names
   * @param id the case's id
   * @param change what it is to be, made from what its file says now; its id stays
   */
  public Outcome change(Library library, String id, UnaryOperator<RecordedCase> change) {
    Path file = file(id);
    if (isElsewhere(file)) {
      return refused(file, "is no case", "name one that case list shows");
    }
    return kept(
        file,
        now ->
            now.isEmpty()
                ? Rewrite.leave(refused(file, "is not there", "name one that case list shows"))
                : changed(library, file, now.get(), change));
  }

  private Rewrite<Outcome> changed(
      Library library, Path file, String now, UnaryOperator<RecordedCase> change) {
    CaseReader.Read read = new CaseReader(folders, library, binder).read(file, now);
    if (read.recorded().isEmpty()) {
      return Rewrite.leave(
          refused(
              file,
              "cannot be read: " + read.problems().get(0).wrong(),
              "mend that by hand first, so that nothing in it is lost; nothing was written"));
    }
    RecordedCase was = read.recorded().get();
    RecordedCase is = change.apply(was).named(was.id());
    try {
      String text = CaseText.changed(now, was, is);
      Optional<Problem> problem = says(library, file, text, is);
      return problem.isPresent()
          ? Rewrite.leave(new Refused(problem.get()))
          : written(file, is, Optional.of(now), Optional.of(text));
    } catch (Unchangeable e) {
      return Rewrite.leave(
          refused(
              file,
              "is written in a way in which this cannot be changed without changing more",
              "change it by hand; nothing was written"));
    }
  }

  /** Takes back what was written, unless somebody has changed the file meanwhile. */
  public Outcome undo(Written written) {
    Path file = file(written.recorded().id());
    return kept(
        file,
        now ->
            now.equals(written.after())
                ? written(file, written.recorded(), now, written.before())
                : Rewrite.leave(
                    refused(
                        file,
                        "was changed meanwhile",
                        "look what it says now; it was left as it is")));
  }

  private Rewrite<Outcome> written(
      Path file, RecordedCase recorded, Optional<String> before, Optional<String> after) {
    return Rewrite.write(after, new Written(recorded, folders.relative(file), before, after));
  }

  /** What is wrong with a text that is to say a case; empty when it says it. */
  private Optional<Problem> says(Library library, Path file, String text, RecordedCase wanted) {
    CaseReader.Read again = new CaseReader(folders, library, binder).read(file, text);
    Optional<Problem> wrong = again.problems().stream().findFirst();
    return wrong.isPresent() || again.recorded().equals(Optional.of(wanted))
        ? wrong
        : Optional.of(
            problem(file, "would not be read again as it is meant", "leave out what is unusual"));
  }

  private Outcome kept(Path file, Function<Optional<String>, Rewrite<Outcome>> edit) {
    return new SharedTextFile(folders, file, TextFile.LARGEST).change(edit, Refused::new);
  }

  private Refused refused(Path file, String wrong, String right) {
    return new Refused(problem(file, wrong, right));
  }

  private Problem problem(Path file, String wrong, String right) {
    return Problem.error(folders.relative(file), 0, "", wrong, right);
  }

  private Path file(String id) {
    return folders.cases().resolve(id + CaseFile.ENDING);
  }
}
