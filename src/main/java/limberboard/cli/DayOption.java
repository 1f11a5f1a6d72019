package limberboard.cli;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --on}, shared by commands that answer for a day. */
final class DayOption {
  @Option(
      names = "--on",
      paramLabel = "DATE",
      description =
          "The day the answer is for, such as 15.3.2026, \"15 Mar 2026\" or 2026-03-15; today if"
              + " not given.")
  private Optional<LocalDate> day = Optional.empty();

  /** The day asked for, if one was. */
  Optional<LocalDate> asked() {
    return day;
  }

  /** The session on the day asked for. */
  CommandContext in(CommandContext session) {
    return day.map(session::on).orElse(session);
  }
}
