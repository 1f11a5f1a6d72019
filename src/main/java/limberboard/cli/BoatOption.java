package limberboard.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --boat}, shared by commands that can answer for one boat. */
final class BoatOption {
  @Option(
      names = "--boat",
      paramLabel = "BOAT",
      description = {
        "The boat the answer is for: the name of her folder, her name, her hull number,",
        "or, for a boat that nobody has entered, words such as \"a Tarnwick 26 of 2019\" or",
        "\"a Tarnwick 30 of 2017 with carbon mast in fresh water\"."
      })
  private Optional<String> id = Optional.empty();

  Optional<String> id() {
    return id;
  }
}
