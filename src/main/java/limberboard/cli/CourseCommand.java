package limberboard.cli;

import picocli.CommandLine.Command;

/** {@code course}: drills in order, for a day or a week. */
@Command(
    name = "course",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "new|list|paper|line",
    description = {
      "Drills in order, as a page of the library or in a file, which students play from on their"
          + " own copies: drill run PAGE|FILE --number N."
    })
final class CourseCommand {}
