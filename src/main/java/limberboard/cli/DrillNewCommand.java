package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.learn.NextDrill;
import limberboard.drill.learn.Progress;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code drill new}: makes a drill. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Makes a drill: of a symptom on a boat, or with --student where that student is expected to"
          + " learn most.",
      "What is hidden is not said. The same seed, library and cases make the same drill."
    })
final class DrillNewCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private SeedOption seed;

  @Parameters(
      paramLabel = "SYMPTOM",
      arity = "0..1",
      description = "The symptom's id; with --student it may be left out.")
  private Optional<String> symptom = Optional.empty();

  @Option(
      names = "--model",
      paramLabel = "MODEL",
      description = "Make up a boat of this model by the seed.")
  private Optional<String> model = Optional.empty();

  @Option(
      names = "--cause",
      paramLabel = "CAUSE",
      description = "Hide this cause, by the next seed that draws it.")
  private Optional<String> cause = Optional.empty();

  @Option(
      names = "--hints",
      paramLabel = "N",
      description =
          "How many hints are allowed, each at ten minutes of the mark; none if not given.")
  private int hints;

  @Option(names = "--student", paramLabel = "NAME", description = "Choose for this student.")
  private Optional<String> student = Optional.empty();

  @Option(names = "--to", paramLabel = "FILE", description = "Write the drill into a file.")
  private Optional<Path> to = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  DrillNewCommand(CommandContext session) {
    this.session = session;
  }

  /** A drill as {@code --json} prints it, with the reason for choosing it; the keys stay. */
  record View(DrillView drill, Optional<String> why) {}

  @Override
  public Integer call() {
    long from = seed.value();
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    DrillMaker maker = new DrillMaker(session, read);
    Optional<NextDrill.Chosen> chosen =
        symptom.isEmpty() ? Optional.of(choose(folders, maker)) : Optional.empty();
    String id = symptom.orElseGet(() -> chosen.orElseThrow().what().symptom());
    Optional<String> on =
        boat.id().or(() -> chosen.filter(c -> model.isEmpty()).map(each -> each.what().boat()));
    Fault fault = model.isPresent() ? maker.madeUp(id, model.get(), from) : maker.fault(id, on);
    long drawn = cause.isPresent() ? maker.seed(fault, cause.get(), from) : from;
    Drill drill = maker.drill(fault, drawn, hints);
    OutFiles files = new OutFiles(session, folders, json);
    to.ifPresent(
        file ->
            files.text(
                file,
                new DrillFiles()
                    .text(
                        new KeptDrill(
                            drill.order(), drill.stamp(), student, Optional.empty(), List.of()))));
    if (json) {
      new JsonOutput(session.out())
          .print(new View(DrillView.of(drill), chosen.map(NextDrill.Chosen::why)));
    } else {
      chosen.map(NextDrill.Chosen::why).ifPresent(session.out()::println);
      new DrillText(session.out()).beginning(drill);
      session
          .out()
          .println(
              "Play it: limberboard drill run "
                  + to.map(Path::toString)
                      .orElse(
                          id
                              + " --boat \""
                              + drill.order().boat()
                              + "\" --seed "
                              + drawn
                              + (hints == 0 ? "" : " --hints " + hints)));
    }
    return ExitCode.OK;
  }

  private NextDrill.Chosen choose(WorkspaceFolders folders, DrillMaker maker) {
    if (student.isEmpty()) {
      throw new Failure(
          ExitCode.USAGE, "name a symptom, or a student with --student to choose for");
    }
    Progress progress =
        DrillMaker.progress(folders, student.get())
            .orElseGet(() -> new Progress(student.get(), List.of()));
    List<NextDrill.Can> can =
        maker.can().stream()
            .filter(each -> boat.id().isEmpty() || boat.id().get().equals(each.boat()))
            .toList();
    return new NextDrill(progress, can, session.today())
        .chosen()
        .orElseThrow(() -> new Failure(ExitCode.NOT_FOUND, "no symptom and boat to drill"));
  }
}
