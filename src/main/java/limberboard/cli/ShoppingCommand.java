package limberboard.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.print.sheet.ShoppingCsv;
import limberboard.print.sheet.ShoppingSheet;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.shopping.BoughtFor;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.NewRope;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingList;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code shopping}: what to get for chosen work on a boat. */
@Command(
    name = "shopping",
    mixinStandardHelpOptions = true,
    description = {
      "Lists what to get for work on a boat: materials added up and rounded up to packs, what is"
          + " in stock, what must not be mixed, and the tools.",
      "As text if nothing else is asked for; --pdf for paper, --csv for a table, --json for"
          + " programs."
    })
final class ShoppingCommand implements Callable<Integer> {
  private static final int WIDTH = 100;
  private static final String ALL = "all";

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private ListOutput output;

  @Option(
      names = "--boat",
      paramLabel = "BOAT",
      required = true,
      description =
          "The boat: the name of her folder, her name, her hull number, or words such as \"a"
              + " Tarnwick 26 of 2019\".")
  private String boat;

  @Option(
      names = "--work",
      paramLabel = "ID",
      split = ",",
      description =
          "Procedures that the list is for, with commas between; a procedure named twice is done"
              + " twice.")
  private List<String> work = List.of();

  @Option(
      names = "--ropes",
      paramLabel = "ID",
      split = ",",
      description =
          "Ropes of the boat's list of ropes, with commas between, or all. Without --work and"
              + " --season nothing else is on the list.")
  private List<String> ropes = List.of();

  @Option(
      names = "--season",
      paramLabel = "YEAR",
      description = {
        "All work of the season that begins in this year; if no --work and no --ropes are given, of"
            + " the season the day is in, or of the coming one while the boat is laid up.",
        "A season that is over is looked at as on the day after the one before it, if --on is not"
            + " given."
      })
  private Optional<Integer> season = Optional.empty();

  @Mixin private DayOption on;

  @Option(
      names = "--needed",
      paramLabel = "DATE",
      description =
          "With --work and --ropes: the day they are needed; the day of buying if not given.")
  private Optional<LocalDate> needed = Optional.empty();

  ShoppingCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (!work.isEmpty() && season.isPresent()) {
      throw new Failure(ExitCode.USAGE, "give --work or --season, not both");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Boat found = session.fitting(read, Optional.of(boat)).orElseThrow().boat();
    LocalDate day = SeasonDay.of(on.asked(), season, found, session.today());
    Fitting fitting = new Fitting(found, day);
    List<BoughtFor> wanted = new ArrayList<>(jobs(read, needed.orElse(day)));
    wanted.addAll(ropes(RunningRigging.of(read.library(), fitting), needed.orElse(day)));
    if (season.isPresent() || wanted.isEmpty()) {
      wanted.addAll(SeasonJobs.of(Upkeep.of(read.library(), fitting), season));
    }
    ShoppingList list = ShoppingList.of(wanted, fitting, read.stock(found), read.library());
    ShoppingSheet sheets = new ShoppingSheet(read.library());
    output.put(
        session,
        folders,
        new ListOutput.Forms(
            () -> sheets.onPaper(list),
            () -> new ShoppingCsv().render(list),
            () -> ShoppingView.of(list),
            () -> sheets.of(list),
            WIDTH));
    return ExitCode.OK;
  }

  private List<Job> jobs(Workspace read, LocalDate day) {
    List<Job> jobs = new ArrayList<>();
    for (String id : work.stream().map(String::strip).distinct().toList()) {
      long times = work.stream().filter(other -> other.strip().equals(id)).count();
      jobs.add(new Job(procedure(read, id), (int) times, day));
    }
    return jobs;
  }

  private List<NewRope> ropes(RunningRigging rigging, LocalDate day) {
    List<String> ids = ropes.stream().map(String::strip).distinct().toList();
    if (ids.contains(ALL)) {
      return rigging.ropes().stream().map(rope -> new NewRope(rope, day)).toList();
    }
    return ids.stream().map(id -> new NewRope(rope(rigging, id), day)).toList();
  }

  private static Rope rope(RunningRigging rigging, String id) {
    return rigging.ropes().stream()
        .filter(rope -> rope.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                Failure.unknown(
                    "rope",
                    id,
                    rigging.ropes().stream().map(Rope::id).toList(),
                    "\"rigging --boat "
                        + rigging.fitting().boat().id()
                        + " --json\" has the ids of her ropes"));
  }

  private static Page<Procedure> procedure(Workspace read, String id) {
    return read.library()
        .procedure(id)
        .orElseThrow(
            () ->
                Failure.unknown(
                    "procedure",
                    id,
                    read.library().all(Procedure.class).stream().map(Page::id).toList(),
                    "name a page of articles/procedures"));
  }
}
