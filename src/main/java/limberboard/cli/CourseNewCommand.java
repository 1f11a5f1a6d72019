package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.file.CourseFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.learn.CourseProposal;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code course new}: proposes a course. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Proposes a course of drills: the symptoms in turn, each time on the next boat they fit,"
          + " hiding the likeliest cause that the course does not cover yet.",
      "The file says nothing of what is hidden. Take lines out of it, or put them in another order."
    })
final class CourseNewCommand implements Callable<Integer> {
  private static final int MOST = 500;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "SYMPTOM",
      arity = "0..*",
      description = "The symptoms it covers; all if none is named.")
  private List<String> symptoms = List.of();

  @Option(
      names = "--drills",
      paramLabel = "N",
      required = true,
      description = "How many drills, 1 to 500.")
  private int drills;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What chance comes from, a whole number from 0; 0 if not given.")
  private long seed;

  @Option(names = "--title", paramLabel = "TEXT", description = "What it is called.")
  private String title = "Finding faults";

  @Option(
      names = "--to",
      paramLabel = "FILE",
      required = true,
      description = "The file to write, ending in .yaml.")
  private Path to;

  CourseNewCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (drills < 1 || drills > MOST || seed < 0) {
      throw new Failure(
          ExitCode.USAGE, "--drills is a number from 1 to " + MOST + ", and --seed one from 0");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    List<Fault> faults = faults(read);
    List<Drill> proposed = new CourseProposal(faults, seed).drills(drills);
    if (proposed.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "no symptom and boat to make a course of");
    }
    List<KeptDrill> kept =
        proposed.stream()
            .map(
                drill ->
                    new KeptDrill(
                        drill.order(),
                        drill.stamp(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()))
            .toList();
    new OutFiles(session, folders, false)
        .text(to, new CourseFiles().text(new CourseFiles.Course(title, kept)));
    return ExitCode.OK;
  }

  private List<Fault> faults(Workspace read) {
    TraceMaker maker = new TraceMaker(session, read);
    List<Page<Symptom>> pages =
        symptoms.isEmpty()
            ? read.library().all(Symptom.class)
            : symptoms.stream().map(maker::symptom).toList();
    SymptomsOnBoats all = new SymptomsOnBoats(session, read);
    return all.of(pages).map(all::fault).toList();
  }
}
