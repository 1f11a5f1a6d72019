package limberboard.cli;

import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.HiddenNumber;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code course line}: a drill as a course page names it, with the number of its hidden cause. */
@Command(
    name = "line",
    mixinStandardHelpOptions = true,
    description = {
      "Prints a drill as a course page has it in its drills, with the number that stands for the"
          + " hidden cause, so that the page does not name it."
    })
final class CourseLineCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private SeedOption seed;

  @Parameters(paramLabel = "SYMPTOM", description = "The symptom's id.")
  private String symptom;

  @Option(
      names = "--cause",
      paramLabel = "CAUSE",
      required = true,
      description = "The cause to hide; with another seed its number is another.")
  private String cause;

  CourseLineCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    DrillMaker maker = new DrillMaker(session, read);
    Fault fault = maker.fault(symptom, boat.id());
    maker.needCause(fault, cause);
    session.out().println("  - symptom: " + symptom);
    session.out().println("    boat: " + fault.fitting().boat().id());
    session.out().println("    seed: " + seed.value());
    session.out().println("    hides: " + HiddenNumber.of(symptom, cause, seed.value()));
    return ExitCode.OK;
  }
}
