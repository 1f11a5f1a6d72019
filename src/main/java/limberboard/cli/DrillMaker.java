package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.file.StudentFiles;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.drill.learn.NextDrill;
import limberboard.drill.learn.Progress;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Nearest;
import limberboard.trace.Fault;

/**
 * Makes drills in one workspace from what somebody asks for.
 *
 * @param session where the command runs
 * @param workspace the workspace
 */
record DrillMaker(CommandContext session, Workspace workspace) {

  /** The fault of a symptom on a boat that is named. */
  Fault fault(String symptom, Optional<String> boat) {
    TraceMaker maker = new TraceMaker(session, workspace);
    return maker.begin(maker.symptom(symptom), maker.fitting(boat)).fault();
  }

  /** The fault of a symptom on a boat made up of a model's choices, the first that it fits. */
  Fault madeUp(String symptom, String model, long seed) {
    Page<Symptom> page = new TraceMaker(session, workspace).symptom(symptom);
    Page<Model> found =
        workspace
            .library()
            .model(model)
            .orElseThrow(
                () -> {
                  List<String> ids =
                      workspace.library().all(Model.class).stream().map(Page::id).toList();
                  return Failure.unknown(
                      "model", model, ids, "there are " + String.join(", ", ids));
                });
    try {
      Boat boat = drills().madeUp(page, found, seed);
      Fitting fitting = new Fitting(boat, session.today());
      return Fault.of(page, fitting, workspace.library(), workspace.cases());
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.NOT_FOUND, e.getMessage());
    }
  }

  private WorkspaceDrills drills() {
    return new WorkspaceDrills(workspace, session.today());
  }

  /** A drill on a fault. */
  Drill drill(Fault fault, long seed, int hints) {
    try {
      return Drill.of(
          new DrillOrder(
              fault.page().id(), fault.fitting().boat().id(), fault.fitting().on(), seed, hints),
          fault);
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.USAGE, e.getMessage());
    }
  }

  /** The next seed that hides a cause. */
  long seed(Fault fault, String cause, long from) {
    needCause(fault, cause);
    OptionalLong seed = Drill.seedFor(fault, cause, from);
    return seed.orElseThrow(
        () ->
            new Failure(
                ExitCode.NOT_FOUND,
                "\"" + cause + "\" is as good as ruled out on this boat; choose another cause"));
  }

  /** Says what is wrong when a boat cannot have a cause. */
  void needCause(Fault fault, String cause) {
    if (!fault.hasCause(cause)) {
      boolean listed = fault.page().details().cause(cause).isPresent();
      List<String> ids = fault.causes().stream().map(each -> each.id()).toList();
      throw new Failure(
          ExitCode.NOT_FOUND,
          listed
              ? fault.fitting().boat().name()
                  + " cannot have \""
                  + cause
                  + "\": "
                  + fault.fitting().judge(fault.page().details().cause(cause).get().fits()).reason()
              : "\""
                  + cause
                  + "\" is no cause of "
                  + fault.page().id()
                  + "; "
                  + Nearest.advice(cause, ids, "there are " + String.join(", ", ids)));
    }
  }

  /** The drill of a file, on the figures it was made with, or the reason why not. */
  Drill drill(Path file, KeptDrill kept) {
    try {
      return drills().drill(kept);
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.NOT_FOUND, file + ": " + e.getMessage());
    }
  }

  /** A drill of a file. */
  static KeptDrill read(CommandContext session, Path asked) {
    Path file = session.folder().resolve(asked);
    DrillFiles.Read read = new DrillFiles().read(file);
    read.problems().forEach(problem -> session.err().println(problem));
    return read.drill()
        .orElseThrow(
            () -> new Failure(ExitCode.NOT_FOUND, asked + " is no drill that can be read"));
  }

  /** What a student has drilled; empty where nobody of that name has. */
  static Optional<Progress> progress(WorkspaceFolders folders, String student) {
    StudentFiles.Read read = new StudentFiles(folders).read(student);
    if (!read.problems().isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, read.problems().get(0).toString());
    }
    return read.student().map(StudentFiles.Student::progress);
  }

  /** What was played, as a file says it. */
  DrillRun run(Path file, KeptDrill kept) {
    try {
      return DrillRun.of(drill(file, kept), kept.steps());
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.NOT_FOUND, file + ": " + e.getMessage());
    }
  }

  /** Everything that can be drilled on the boats there are. */
  List<NextDrill.Can> can() {
    return drills().can();
  }
}
