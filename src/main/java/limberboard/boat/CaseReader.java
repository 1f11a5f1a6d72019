package limberboard.boat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.library.Library;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Limits;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.library.value.Within;

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

  /** A case as its file has it. */
  record CaseFile(
      @Required String symptom,
      @Required String cause,
      @Required LocalDate date,
      @Required String model,
      @Within(least = Limits.FIRST_YEAR, most = Limits.LAST_YEAR) OptionalInt built,
      Map<String, String> equipment,
      Optional<Water> water,
      Optional<Use> use,
      Map<String, String> answers,
      String note) {
    CaseFile {
      built = built == null ? OptionalInt.empty() : built;
      answers = EmptyValues.map(answers);
      note = note == null ? "" : note;
    }
  }

  /** A case, if it can be used, with what is wrong in its file. */
  record Read(Optional<RecordedCase> recorded, List<Problem> problems) {}

  Read read(Path path) {
    String file = folders.relative(path);
    TextFile.Result text = TextFile.read(folders, path, TextFile.LARGEST);
    if (!text.problems().isEmpty()) {
      return new Read(Optional.empty(), text.problems());
    }
    HeaderBinder.Bound<CaseFile> bound = binder.read(file, text.text(), CaseFile.class);
    List<Problem> problems = new ArrayList<>(bound.problems());
    Optional<RecordedCase> recorded =
        bound
            .value()
            .filter(read -> known(file, bound, read, problems))
            .map(read -> of(path, read));
    return new Read(recorded, problems);
  }

  private static RecordedCase of(Path path, CaseFile read) {
    String name = path.getFileName().toString();
    return new RecordedCase(
        name.substring(0, name.lastIndexOf('.')),
        read.symptom(),
        read.cause(),
        read.date(),
        read.model(),
        read.built(),
        read.answers(),
        read.note());
  }

  private boolean known(
      String file, HeaderBinder.Bound<CaseFile> bound, CaseFile read, List<Problem> problems) {
    Optional<Page<Symptom>> symptom = library.symptom(read.symptom());
    if (symptom.isEmpty()) {
      List<String> ids = library.all(Symptom.class).stream().map(Page::id).toList();
      problems.add(
          Problem.error(
              file,
              bound.line("symptom"),
              "symptom",
              "there is no symptom \"" + read.symptom() + "\"",
              Nearest.advice(read.symptom(), ids, "name a page of articles/symptoms")));
      return false;
    }
    Symptom details = symptom.get().details();
    read.answers()
        .forEach((check, answer) -> answer(file, bound, details, check, answer, problems));
    if (library.model(read.model()).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              bound.line("model"),
              "model",
              "there is no model \"" + read.model() + "\"",
              "name a page of articles/models"));
    }
    if (details.cause(read.cause()).isEmpty() && !read.cause().equals(Symptom.SOMETHING_ELSE)) {
      problems.add(
          Problem.error(
              file,
              bound.line("cause"),
              "cause",
              "the symptom has no cause \"" + read.cause() + "\"",
              "name one of its causes, or " + Symptom.SOMETHING_ELSE));
      return false;
    }
    return true;
  }

  private static void answer(
      String file,
      HeaderBinder.Bound<CaseFile> bound,
      Symptom symptom,
      String check,
      String answer,
      List<Problem> problems) {
    Optional<Check> found = symptom.check(check);
    if (found.map(c -> c.answers().contains(answer)).orElse(false)) {
      return;
    }
    problems.add(
        Problem.error(
            file,
            bound.line("answers." + check),
            "answers." + check,
            found.isEmpty() ? "the symptom has no such check" : "has no answer \"" + answer + "\"",
            "name a check of the symptom and one of its answers"));
  }
}
