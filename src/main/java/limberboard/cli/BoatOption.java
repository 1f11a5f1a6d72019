package limberboard.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --boat}, shared by commands that can answer for one boat. */
final class BoatOption {
  @Option(
      names = "--boat",
      paramLabel = "BOAT",
      description = "The boat the answer is for, by the name of its folder.")
  private Optional<String> id = Optional.empty();

  Optional<String> id() {
    return id;
  }
}
