package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.Ids;
import limberboard.library.page.Kind;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;
import limberboard.writing.start.BegunPage;
import limberboard.writing.start.IdWords;
import limberboard.writing.start.OutlineReader;
import limberboard.writing.start.SymptomOutline;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code new}: begins a page. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Begins a page of a kind, and says what has still to be filled in.",
      "A symptom can be begun from an outline: a line Causes and one cause a line, a line Checks"
          + " and one question a line, its answers indented below it."
    })
final class NewCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      index = "0",
      paramLabel = "KIND",
      description = "symptom, procedure, material, model, caution, topic or wording.")
  private String kind;

  @Parameters(index = "1", paramLabel = "TITLE", description = "The page's title.")
  private String title;

  @Option(names = "--id", paramLabel = "ID", description = "Its id; made from the title without.")
  private Optional<String> id = Optional.empty();

  @Option(
      names = "--outline",
      paramLabel = "FILE",
      description = "Causes and checks as plain lines, for a symptom; - reads them from here.")
  private Optional<String> outline = Optional.empty();

  @Option(names = "--json", description = "Print JSON: id, kind, path, and what is missing.")
  private boolean json;

  NewCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    Kind made = kind();
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    WorkspaceReader reader = session.reader(folders);
    Library library = session.workspace(reader).library();
    Optional<SymptomOutline> lines = outline(made);
    String wanted = id(folders, library);
    BegunPage page =
        lines
            .map(read -> BegunPage.of(read, title.strip(), wanted))
            .orElseGet(() -> BegunPage.of(made, title.strip(), wanted));
    SaveOutcome saved = new PageFile(folders, page.path()).save(Optional.empty(), page.text());
    if (saved instanceof SaveOutcome.Refused refused) {
      throw new Failure(ExitCode.IO, refused.problem().toString());
    }
    if (saved instanceof SaveOutcome.Changed) {
      throw new Failure(ExitCode.USAGE, page.path() + " is there already; nothing was written");
    }
    List<Problem> missing = reader.typing(page.path(), made).read(page.text().plain()).problems();
    print(page, lines, missing);
    return ExitCode.OK;
  }

  private Kind kind() {
    List<String> kinds = Arrays.stream(Kind.values()).map(Kind::word).toList();
    return Arrays.stream(Kind.values())
        .filter(each -> each.word().equals(kind))
        .findFirst()
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.USAGE,
                    "\""
                        + kind
                        + "\" is no kind of page; "
                        + Nearest.advice(kind, kinds, "write one of " + String.join(", ", kinds))));
  }

  private String id(WorkspaceFolders folders, Library library) {
    String wanted = id.orElseGet(() -> IdWords.of(title));
    if (!Ids.isId(wanted)) {
      throw new Failure(
          ExitCode.USAGE,
          id.isPresent()
              ? "\"" + wanted + "\" is no page id; use lower-case letters, digits and hyphens"
              : "no id can be made from \"" + title + "\"; name one with --id");
    }
    for (Kind each : Kind.values()) {
      Path file = folders.articles().resolve(each.folder()).resolve(wanted + ".md");
      if (library.page(wanted).isPresent() || FileBytes.isThere(file)) {
        throw new Failure(
            ExitCode.USAGE,
            "there is a page \"" + wanted + "\" already; name another id with --id");
      }
    }
    return wanted;
  }

  private Optional<SymptomOutline> outline(Kind made) {
    if (outline.isPresent() && made != Kind.SYMPTOM) {
      throw new Failure(ExitCode.USAGE, "an outline is for a symptom; leave --outline away");
    }
    return outline.map(
        name ->
            OutlineReader.read(
                name,
                name.equals("-")
                    ? session.in().lines().collect(Collectors.joining("\n"))
                    : text(name)));
  }

  private String text(String name) {
    TextFile.Result read = TextFile.read(session.folder().resolve(name), name);
    if (!read.problems().isEmpty()) {
      throw new Failure(ExitCode.IO, read.problems().get(0).toString());
    }
    return read.text();
  }

  private void print(BegunPage page, Optional<SymptomOutline> lines, List<Problem> missing) {
    List<Problem> unread = lines.map(SymptomOutline::problems).orElse(List.of());
    boolean alike = lines.filter(SymptomOutline::isUnweighed).isPresent();
    if (json) {
      new JsonOutput(session.out())
          .print(
              new View(
                  page.id(),
                  page.kind().word(),
                  page.path(),
                  alike,
                  ValidateCommand.JsonProblem.all(missing),
                  ValidateCommand.JsonProblem.all(unread)));
      return;
    }
    session.out().println("Written: " + page.path());
    unread.forEach(problem -> session.out().println("Left out: " + problem));
    if (alike) {
      session
          .out()
          .println("Causes without a weight count alike, 1 each, until you say otherwise.");
    }
    if (!missing.isEmpty()) {
      session.out().println("Still to be filled in:");
      missing.forEach(problem -> session.out().println(problem));
    }
  }

  /** What {@code --json} prints. */
  record View(
      String id,
      String kind,
      String path,
      boolean weightsAlike,
      List<ValidateCommand.JsonProblem> missing,
      List<ValidateCommand.JsonProblem> leftOut) {}
}
