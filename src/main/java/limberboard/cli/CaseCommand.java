package limberboard.cli;

import picocli.CommandLine.Command;

/** {@code case}: keeps what traced faults turned out to be. */
@Command(
    name = "case",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "new|close|list|invent",
    description = {
      "Keeps what a traced fault turned out to be: the boat's facts, the answers, the cause.",
      "Recorded cases count for the chances of the next trace. No name is kept unless you ask for"
          + " it."
    })
final class CaseCommand {}
