package limberboard.cli;

import picocli.CommandLine.Command;

/** {@code course}: drills in order, for a day or a week. */
@Command(
    name = "course",
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "new|list",
    description = {
      "Drills in order, in a file that students play from on their own copies: drill run FILE"
          + " --number N."
    })
final class CourseCommand {}
