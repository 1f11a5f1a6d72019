package limberboard.cli;

import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.trace.Fault;
import picocli.CommandLine.Option;

/** The options {@code --symptom} and {@code --boat} of tables with a row for each of both. */
final class RowsOption {
  @Option(names = "--symptom", paramLabel = "SYMPTOM", description = "Only this symptom.")
  private Optional<String> symptom = Optional.empty();

  @Option(names = "--boat", paramLabel = "BOAT", description = "Only this boat.")
  private Optional<String> boat = Optional.empty();

  /** What is asked for, each reckoned when it is its turn. */
  Stream<Fault> faults(CommandContext session, Workspace workspace) {
    SymptomsOnBoats rows = new SymptomsOnBoats(session, workspace);
    return rows.all()
        .filter(one -> symptom.map(one.symptom().id()::equals).orElse(true))
        .filter(one -> boat.map(one.fitting().boat().id()::equals).orElse(true))
        .map(rows::fault);
  }
}
