package limberboard.boat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.Library;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;

/** Reads recorded cases. */
final class CaseReader {
  private final WorkspaceFolders folders;
  private final Library library;
  private final HeaderBinder binder;

  CaseReader(WorkspaceFolders folders, Library library, HeaderBinder binder) {
    this.folders = folders;
    this.library = library;
    this.binder = binder;
  }

  /** A case, if it can be used, with what is wrong in its file. */
  record Read(Optional<RecordedCase> recorded, List<Problem> problems) {}

  Read read(Path path) {
    TextFile.Result text = TextFile.read(folders, path, TextFile.LARGEST);
    return text.problems().isEmpty()
        ? read(path, text.text())
        : new Read(Optional.empty(), text.problems());
  }

  /** Reads the text of a case's file. */
  Read read(Path path, String text) {
    String file = folders.relative(path);
    HeaderBinder.Bound<CaseFile> bound = binder.read(file, text, CaseFile.class);
    Judging judging = new Judging(file, bound, new ArrayList<>(bound.problems()));
    Optional<RecordedCase> recorded =
        bound.value().filter(read -> usable(read, judging)).map(read -> read.recorded(path));
    return new Read(recorded, judging.problems());
  }

  /** The file while it is judged. */
  private record Judging(String file, HeaderBinder.Bound<CaseFile> bound, List<Problem> problems) {
    void wrong(String key, String wrong, String right) {
      problems.add(Problem.error(file, bound.line(key), key, wrong, right));
    }
  }

  private boolean usable(CaseFile read, Judging judging) {
    Optional<Page<Symptom>> symptom = library.symptom(read.symptom());
    if (symptom.isEmpty()) {
      List<String> ids = library.all(Symptom.class).stream().map(Page::id).toList();
      judging.wrong(
          "symptom",
          "there is no symptom \"" + read.symptom() + "\"",
          Nearest.advice(read.symptom(), ids, "name a page of articles/symptoms"));
      return false;
    }
    Symptom details = symptom.get().details();
    read.answers().forEach((check, answer) -> answer(details, check, answer, judging));
    read.cantTell().forEach(check -> cantTell(details, check, read, judging));
    facts(read, judging);
    end(read, judging);
    return cause(details, read, judging);
  }

  private void facts(CaseFile read, Judging judging) {
    Optional<Page<Model>> model = library.model(read.model());
    if (model.isEmpty()) {
      judging.wrong(
          "model", "there is no model \"" + read.model() + "\"", "name a page of articles/models");
      return;
    }
    read.equipment()
        .forEach(
            (id, choice) -> {
              Optional<Model.Equipment> equipment = model.get().details().equipment(id);
              if (equipment.stream()
                  .flatMap(each -> each.choices().stream())
                  .noneMatch(each -> each.id().equals(choice))) {
                judging.wrong(
                    "equipment." + id,
                    equipment.isEmpty()
                        ? "this model has no such equipment"
                        : "\"" + choice + "\" is not among its choices",
                    "name equipment of the model and one of its choices");
              }
            });
  }

  private void end(CaseFile read, Judging judging) {
    read.mend()
        .filter(mend -> library.procedure(mend).isEmpty())
        .ifPresent(
            mend -> {
              List<String> ids = library.all(Procedure.class).stream().map(Page::id).toList();
              judging.wrong(
                  "mend",
                  "there is no procedure \"" + mend + "\"",
                  Nearest.advice(mend, ids, "name a page of articles/procedures"));
            });
    least("minutes", read.minutes(), judging);
    least("mend-minutes", read.mendMinutes(), judging);
    least("cost", read.cost(), judging);
  }

  private static void least(String key, OptionalDouble number, Judging judging) {
    if (number.isPresent() && number.getAsDouble() < 0) {
      judging.wrong(key, "is less than 0", "write 0 or more, or leave it out");
    }
  }

  private static boolean cause(Symptom symptom, CaseFile read, Judging judging) {
    boolean open = read.outcome().map(CaseOutcome.OPEN::equals).orElse(false);
    if (read.cause().isEmpty()) {
      if (!open) {
        judging.wrong(
            "cause",
            "is missing",
            "name a cause of the symptom or "
                + Symptom.SOMETHING_ELSE
                + ", or write outcome: open while nobody knows");
      }
      return open;
    }
    String cause = read.cause().get();
    if (symptom.cause(cause).isEmpty() && !cause.equals(Symptom.SOMETHING_ELSE)) {
      List<String> ids = symptom.causes().stream().map(Cause::id).toList();
      judging.wrong(
          "cause",
          "the symptom has no cause \"" + cause + "\"",
          Nearest.advice(cause, ids, "name one of its causes, or " + Symptom.SOMETHING_ELSE));
      return false;
    }
    return true;
  }

  private static void answer(Symptom symptom, String check, String answer, Judging judging) {
    Optional<Check> found = symptom.check(check);
    if (found.map(c -> c.answers().contains(answer)).orElse(false)) {
      return;
    }
    judging.wrong(
        "answers." + check,
        found.isEmpty() ? "the symptom has no such check" : "has no answer \"" + answer + "\"",
        "name a check of the symptom and one of its answers");
  }

  private static void cantTell(Symptom symptom, String check, CaseFile read, Judging judging) {
    if (symptom.check(check).isEmpty()) {
      judging.wrong(
          "cant-tell", "the symptom has no check \"" + check + "\"", "name checks of the symptom");
    } else if (read.answers().containsKey(check)) {
      judging.wrong(
          "cant-tell",
          "\"" + check + "\" has an answer as well",
          "keep it in answers or here, not in both");
    }
  }
}
