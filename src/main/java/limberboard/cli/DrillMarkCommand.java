package limberboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.Counsel;
import limberboard.drill.DrillRun;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.learn.Progress;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;
import limberboard.library.file.WorkspaceFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code drill mark}: marks results, and shows what a student has learnt. */
@Command(
    name = "mark",
    mixinStandardHelpOptions = true,
    description = {
      "Marks results that drill run wrote, each on the figures it was played on; one whose figures"
          + " are not those here is refused with the reason, and the others are marked.",
      "With --student and no file: what that student has drilled, and where it costs."
    })
final class DrillMarkCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "FILE", arity = "0..*", description = "Results.")
  private List<Path> files = List.of();

  @Option(names = "--student", paramLabel = "NAME", description = "Show this student's progress.")
  private Optional<String> student = Optional.empty();

  @Option(names = "--json", description = "Print JSON: one line a result.")
  private boolean json;

  DrillMarkCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    if (files.isEmpty()) {
      return progress(folders);
    }
    Workspace read = session.workspace(folders);
    List<String> refused = new ArrayList<>();
    for (Path file : files) {
      try {
        mark(new DrillMaker(session, read), file);
      } catch (Failure failure) {
        refused.add(failure.getMessage());
        if (json) {
          new JsonOutput(session.out()).print(Map.of("error", failure.getMessage()));
        } else {
          session.err().println("limberboard: " + failure.getMessage());
        }
      }
    }
    return refused.isEmpty() ? ExitCode.OK : ExitCode.NOT_FOUND;
  }

  private void mark(DrillMaker maker, Path file) {
    KeptDrill kept = DrillMaker.read(session, file);
    DrillRun run = maker.run(file, kept);
    DrillMark mark = new DrillMarker(new Counsel(run.drill().fault())).mark(run);
    if (json) {
      new JsonOutput(session.out())
          .print(new DrillRunCommand.Marked(DrillMarkView.of(mark, kept.student())));
    } else {
      session
          .out()
          .println(
              file
                  + kept.student().map(name -> ", " + name).orElse("")
                  + ": "
                  + run.drill().fault().page().title()
                  + ", "
                  + run.drill().fault().fitting().boat().name());
      new DrillText(session.out()).mark(mark);
    }
  }

  private int progress(WorkspaceFolders folders) {
    if (student.isEmpty()) {
      throw new Failure(ExitCode.USAGE, "name results to mark, or a student with --student");
    }
    Progress progress =
        DrillMaker.progress(folders, student.get())
            .orElseThrow(
                () ->
                    new Failure(
                        ExitCode.NOT_FOUND,
                        "there is no student “"
                            + student.get()
                            + "” yet; drill run --student begins one"));
    ProgressView view = ProgressView.of(progress, session.today());
    if (json) {
      new JsonOutput(session.out()).print(view);
    } else {
      view.print(session.out());
    }
    return ExitCode.OK;
  }
}
