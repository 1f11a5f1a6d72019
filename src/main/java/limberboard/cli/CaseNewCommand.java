package limberboard.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseWriter;
import limberboard.boat.Fitting;
import limberboard.boat.LogDay;
import limberboard.boat.RecordedCase;
import limberboard.boat.Typed;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code case new}: writes a case, at any point of a trace. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Writes a case into a file of its own: the boat's facts, what was found, how it ended.",
      "Without --cause or --found it stays open, and case close completes it."
    })
final class CaseNewCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private CaseEndOptions end;

  @Parameters(paramLabel = "SYMPTOM", description = "The symptom's id.")
  private String symptom;

  @Option(
      names = "--answer",
      paramLabel = "CHECK=ANSWER",
      description = "What has been found; ? as the answer means it could not be told.")
  private List<String> answers = List.of();

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today if not given.")
  private Optional<LocalDate> day = Optional.empty();

  @Option(names = "--keep-boat", description = "Keep which boat it was, not her facts alone.")
  private boolean keepBoat;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CaseNewCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    Workspace read = session.workspace(folders);
    TraceMaker maker = new TraceMaker(session, read);
    Fitting fitting = maker.fitting(boat.id());
    Page<Symptom> page = maker.begin(maker.symptom(symptom), fitting).fault().page();
    RecordedCase begun =
        new RecordedCase(
            "",
            page.id(),
            Optional.empty(),
            day(),
            CaseBoat.of(fitting.boat(), keepBoat),
            Map.of(),
            List.of(),
            CaseEnd.OPEN,
            "");
    RecordedCase wanted =
        end.ended(new CaseAnswers(answers).added(begun, page.details()), page.details());
    return new CaseOutput(session, json)
        .written(new CaseWriter(folders).create(read.library(), wanted));
  }

  private LocalDate day() {
    LocalDate on = day.orElse(session.today());
    Typed<LocalDate> typed = LogDay.check(on);
    if (on.isAfter(session.today()) || typed.good().isEmpty()) {
      throw new Failure(
          ExitCode.USAGE,
          "--on: " + on + " is no day of a case; it lies in the future or long ago");
    }
    return on;
  }
}
