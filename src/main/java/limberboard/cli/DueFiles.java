package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.boat.BoatQuestions;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.drawing.TimeLineDrawing;
import limberboard.print.sheet.AppointmentsCsv;
import limberboard.print.sheet.AppointmentsSheet;
import limberboard.print.sheet.DueSheet;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.Upkeep;
import picocli.CommandLine.Option;

/** The files that {@code due} writes besides a calendar. */
final class DueFiles {
  private static final int SEASONS = 3;

  @Option(
      names = "--pdf",
      paramLabel = "FILE",
      description = "Write the list and a time line of three seasons as A4 PDF; needs --boat.")
  private Optional<Path> pdf = Optional.empty();

  @Option(
      names = "--svg",
      paramLabel = "FILE",
      description = "Draw the time line of three seasons as SVG; needs --boat.")
  private Optional<Path> svg = Optional.empty();

  @Option(names = "--csv", paramLabel = "FILE", description = "Write the list as CSV (RFC 4180).")
  private Optional<Path> csv = Optional.empty();

  /** Whether a file is to be written. */
  boolean isAsked() {
    return pdf.isPresent() || svg.isPresent() || csv.isPresent();
  }

  /** Whether a file is to be written that is about one boat. */
  boolean needsBoat() {
    return pdf.isPresent() || svg.isPresent();
  }

  /** Writes them. */
  void write(CommandContext session, WorkspaceFolders folders, Workspace read, List<Upkeep> boats) {
    OutFiles files = new OutFiles(session, folders, true);
    Upkeep first = boats.get(0);
    BoatQuestions doubts = new BoatQuestions(folders, session.today());
    csv.ifPresent(file -> files.text(file, DueCsv.of(boats)));
    svg.ifPresent(file -> files.text(file, TimeLineDrawing.whole(TimeLine.of(first, SEASONS))));
    pdf.ifPresent(
        file ->
            files.pdf(file, DueSheet.of(first, doubts.of(read, first.fitting().boat()), SEASONS)));
  }

  /**
   * Writes what is to be booked; there is no drawing of it.
   *
   * @param coming whether also what is to be booked only after this season
   */
  void writeAppointments(
      CommandContext session, WorkspaceFolders folders, List<Upkeep> boats, boolean coming) {
    if (svg.isPresent()) {
      throw new Failure(ExitCode.USAGE, "--svg draws a time line; --appointments has none");
    }
    OutFiles files = new OutFiles(session, folders, true);
    AppointmentsCsv table = new AppointmentsCsv();
    boats.forEach(upkeep -> table.with(upkeep, upkeep.appointments(coming)));
    csv.ifPresent(file -> files.text(file, table.text()));
    Upkeep first = boats.get(0);
    pdf.ifPresent(
        file -> files.pdf(file, AppointmentsSheet.onPaper(first, first.appointments(coming))));
  }
}
