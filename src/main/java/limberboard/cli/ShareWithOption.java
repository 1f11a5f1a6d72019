package limberboard.cli;

import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --with}, shared by {@code share pull} and {@code push}. */
final class ShareWithOption {
  @Option(
      names = "--with",
      paramLabel = "ADDRESS",
      description = "With what to share, the first time: a folder, ssh or https address.")
  private Optional<String> with = Optional.empty();

  /** The address, if one is given. */
  Optional<String> address(CommandContext session) {
    return with.map(address -> ShareOptions.address(session, address));
  }
}
