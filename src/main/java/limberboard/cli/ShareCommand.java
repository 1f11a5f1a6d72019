package limberboard.cli;

import picocli.CommandLine.Command;

/** {@code share}: shares the workspace with another copy of it. */
@Command(
    name = "share",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "pull|push|copy",
    description = {
      "Shares the workspace with another copy through an ordinary Git remote: a folder, ssh or"
          + " https.",
      "Only when asked, and no password is ever kept."
    })
final class ShareCommand {}
