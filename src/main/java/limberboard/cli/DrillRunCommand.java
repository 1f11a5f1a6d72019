package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillReply;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.StepDone;
import limberboard.drill.StepReader;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.file.StudentFiles;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.DrillMarker;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.NextStep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code drill run}: plays a drill, and marks it. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description = {
      "Plays a drill: a symptom on a boat, or the drill of a file that drill new wrote.",
      "With - it asks for nothing and takes one step a line from standard input, for scripts: "
          + StepReader.WORDS
          + "."
    })
final class DrillRunCommand implements Callable<Integer> {
  private static final String SCRIPT = "-";

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private SeedOption seed;

  @Parameters(
      paramLabel = "SYMPTOM|FILE|PAGE [-]",
      arity = "1..2",
      description =
          "The symptom's id, a drill's or course's file, or a course page's id; and - for steps"
              + " from standard input.")
  private List<String> what = List.of();

  @Option(
      names = "--hints",
      paramLabel = "N",
      description =
          "How many hints are allowed, each at ten minutes of the mark; none if not given.")
  private int hints;

  @Option(names = "--number", paramLabel = "N", description = "Which drill of a course.")
  private int number;

  @Option(
      names = "--student",
      paramLabel = "NAME",
      description = "Keep the marks for this student, in drills/students, which is never shared.")
  private Optional<String> student = Optional.empty();

  @Option(
      names = "--result",
      paramLabel = "FILE",
      description = "Write what was played into a file, for drill mark.")
  private Optional<Path> result = Optional.empty();

  @Option(names = "--json", description = "Print JSON, one value a line.")
  private boolean json;

  DrillRunCommand(CommandContext session) {
    this.session = session;
  }

  /** The first line of {@code --json}; the keys stay. */
  record Begun(DrillView drill) {}

  /** What came of a step; the keys stay. */
  record Stepped(DrillView.StepView step) {}

  /** The last line; the keys stay. */
  record Marked(DrillMarkView mark) {}

  /** A step that could not be done; the keys stay. */
  record Wrong(String error) {}

  @Override
  public Integer call() throws IOException {
    boolean script = what.size() > 1 && what.get(1).equals(SCRIPT);
    if (what.size() > 1 && !script) {
      throw new Failure(ExitCode.USAGE, "after the symptom or file comes - or nothing");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Drill drill = drill(new DrillMaker(session, read));
    if (student.isPresent()) {
      session.foldersToWrite(workspace.folder());
    }
    Counsel counsel = new Counsel(drill.fault());
    if (json) {
      print(new Begun(DrillView.of(drill)));
    } else {
      new DrillText(session.out()).beginning(drill);
    }
    DrillRun run = play(drill, counsel, script);
    DrillMark mark = new DrillMarker(counsel).mark(run);
    if (json) {
      print(new Marked(DrillMarkView.of(mark, student)));
    } else {
      new DrillText(session.out()).mark(mark);
    }
    return keep(folders, mark) ? ExitCode.OK : ExitCode.IO;
  }

  private Drill drill(DrillMaker maker) {
    String asked = what.get(0);
    CourseSource courses = new CourseSource(session, maker.workspace());
    if (number != 0 || courses.pages().page(asked).isPresent()) {
      return courses.drill(asked, number, hints);
    } else if (CourseSource.isFile(asked)) {
      KeptDrill kept = DrillMaker.read(session, Path.of(asked));
      student = student.or(kept::student);
      return maker.drill(Path.of(asked), kept);
    }
    return maker.drill(maker.fault(asked, boat.id()), seed.value(), hints);
  }

  private DrillRun play(Drill drill, Counsel counsel, boolean script) throws IOException {
    DrillRun run = DrillRun.begin(drill);
    while (!run.ended()) {
      if (!script) {
        session.out().print("> ");
        session.out().flush();
      }
      String line = session.in().readLine();
      if (line == null) {
        return run;
      }
      if (line.strip().equals("list") && !json) {
        new DrillText(session.out()).choices(drill);
      } else if (line.strip().equals("cautions") && !json) {
        new CautionsText(session.out()).inFull(drill.cautions());
      } else if (!line.isBlank()) {
        run = step(run, line, counsel);
      }
    }
    return run;
  }

  private DrillRun step(DrillRun run, String line, Counsel counsel) {
    try {
      DrillRun then = run.take(StepReader.read(line));
      boolean hinted =
          then.last().map(each -> each.reply().kind() == DrillReply.Kind.HINT).orElse(false);
      String hint = hinted ? hint(counsel.best(run)) : "";
      if (json) {
        print(new Stepped(DrillView.StepView.of(then, hint)));
      } else {
        new DrillText(session.out()).reply(then, hint);
      }
      return then;
    } catch (IllegalArgumentException e) {
      if (json) {
        print(new Wrong(e.getMessage()));
      } else {
        session.out().println("Not done: " + e.getMessage() + ".");
      }
      return run;
    }
  }

  private static String hint(NextStep best) {
    return "Best now: " + best.text();
  }

  /** Writes what is to be kept; false when that did not work, which is said. */
  private boolean keep(WorkspaceFolders folders, DrillMark mark) {
    Optional<StudentFiles.Read> kept = Optional.empty();
    if (student.isPresent() && mark.run().ended()) {
      DrillRecord record = DrillRecord.of(mark, session.today());
      kept =
          Optional.of(
              new StudentFiles(folders)
                  .add(student.get(), record, mark.run().drill().order().seed()));
      kept.get().problems().forEach(problem -> session.err().println(problem));
    }
    Optional<String> key = kept.flatMap(StudentFiles.Read::student).map(each -> each.key());
    result.ifPresent(
        file -> {
          List<DrillStep> steps = mark.run().done().stream().map(StepDone::step).toList();
          KeptDrill played =
              new KeptDrill(
                  mark.run().drill().order(), mark.run().drill().stamp(), student, key, steps);
          new OutFiles(session, folders, json).text(file, new DrillFiles().text(played));
        });
    return kept.map(each -> each.problems().isEmpty()).orElse(true);
  }

  private void print(Object value) {
    new JsonOutput(session.out()).print(value);
  }
}
