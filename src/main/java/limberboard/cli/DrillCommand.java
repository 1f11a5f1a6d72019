package limberboard.cli;

import picocli.CommandLine.Command;

/** {@code drill}: faults to practise on. */
@Command(
    name = "drill",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "new|run|mark|paper",
    description = {
      "Practises finding faults on hidden ones, without a boat, and marks skill apart from luck.",
      "No real trace, log or case is touched."
    })
final class DrillCommand {}
