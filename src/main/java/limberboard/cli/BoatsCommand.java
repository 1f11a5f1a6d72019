package limberboard.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import limberboard.boat.Boat;
import limberboard.boat.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code boats}: lists the boats of the workspace. */
@Command(
    name = "boats",
    mixinStandardHelpOptions = true,
    description = "Lists the boats of the workspace with model, year, use and water.")
final class BoatsCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON: boats with their complete equipment.")
  private boolean json;

  BoatsCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    if (json) {
      new JsonOutput(session.out()).print(Map.of("boats", views(read)));
    } else if (read.boats().isEmpty()) {
      session
          .out()
          .println("There are no boats yet. Write boats/<id>/boat.yaml, or add one in the window.");
    } else {
      read.boats().forEach(this::line);
    }
    return ExitCode.OK;
  }

  private void line(Boat boat) {
    session
        .out()
        .printf(
            "%-12s %-14s %-12s hull %-4d built %d  %s, %s water%n",
            boat.id(),
            boat.name(),
            boat.model().title(),
            boat.hull(),
            boat.built(),
            boat.use().spoken(),
            boat.water().spoken());
  }

  private static List<View> views(Workspace read) {
    return read.boats().stream().map(View::of).toList();
  }

  /** A boat as {@code --json} prints it. */
  record View(
      String id,
      String name,
      String model,
      int hull,
      int built,
      String use,
      String water,
      Map<String, String> equipment) {
    static View of(Boat boat) {
      return new View(
          boat.id(),
          boat.name(),
          boat.model().id(),
          boat.hull(),
          boat.built(),
          boat.use().word(),
          boat.water().word(),
          boat.equipment());
    }
  }
}
