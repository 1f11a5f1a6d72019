package limberboard.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.sheet.WorkListCsv;
import limberboard.print.sheet.WorkListSheet;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkList;
import limberboard.upkeep.list.WorkListMaker;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code list}: the fitting-out or laying-up list of a boat, in the order of the walk. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = {
      "The fitting-out or laying-up list of a boat, in the order in which one walks her once.",
      "As text if nothing else is asked for; --pdf for paper with boxes to tick."
    })
final class ListCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private DayOption day;
  @Mixin private ListOutput output;

  @Parameters(paramLabel = "LIST", description = "fitting-out or laying-up.")
  private String list;

  @Option(
      names = "--season",
      paramLabel = "YEAR",
      description = {
        "The year in which the season begins; this or the coming one if not given.",
        "A season that is over is looked at as on the day after the one before it, if --on is not"
            + " given."
      })
  private Optional<Integer> season = Optional.empty();

  @Option(
      names = "--everything",
      description = "All work with an interval; what is not due says when it will be.")
  private boolean everything;

  ListCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    ListKind kind = kind();
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Boat found = new TraceMaker(session, read).fitting(boat.id()).boat();
    Fitting fitting = new Fitting(found, SeasonDay.of(day.asked(), season, found, session.today()));
    WorkList made = new WorkListMaker(fitting).list(kind, tasks(kind, read, fitting));
    WorkListSheet sheets = new WorkListSheet(read.library());
    output.put(
        session,
        folders,
        new ListOutput.Forms(
            () -> sheets.onPaper(made),
            () -> new WorkListCsv(read.library()).render(made),
            () -> ListView.of(made, read.library()),
            () -> sheets.of(made),
            WIDTH));
    return ExitCode.OK;
  }

  private List<Task> tasks(ListKind kind, Workspace read, Fitting fitting) {
    ListWork work = new ListWork(Upkeep.of(read.library(), fitting));
    int year = season.orElseGet(() -> work.season(kind));
    return everything ? work.everything(kind, year) : work.due(kind, year);
  }

  private ListKind kind() {
    return ListKind.ofWord(list)
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.USAGE,
                    "there is no list \""
                        + list
                        + "\"; there are "
                        + Arrays.stream(ListKind.values())
                            .map(ListKind::word)
                            .collect(Collectors.joining(" and "))));
  }
}
