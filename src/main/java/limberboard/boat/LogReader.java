package limberboard.boat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.file.CsvText;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.library.value.LogEvents;

/** Reads a boat's log (RFC 4180); a broken line is reported and left out, the rest is read. */
final class LogReader {
  private static final String AN_ID = "[a-z0-9-]+";
  private final WorkspaceFolders folders;
  private final Library library;

  LogReader(WorkspaceFolders folders, Library library) {
    this.folders = folders;
    this.library = library;
  }

  /** The entries by date, with what is wrong in the file. */
  record Read(List<LogEntry> entries, List<Problem> problems) {}

  Read read(Path log) {
    String file = folders.relative(log);
    TextFile.Result text = TextFile.read(folders, log, LogWriter.LARGEST);
    List<Problem> problems = new ArrayList<>(text.problems());
    List<LogEntry> entries = new ArrayList<>();
    if (problems.isEmpty()) {
      read(file, text.text(), entries, problems);
    }
    entries.sort(Comparator.comparing(LogEntry::date));
    problems.addAll(backwards(file, entries));
    return new Read(List.copyOf(entries), problems);
  }

  private void read(String file, String text, List<LogEntry> entries, List<Problem> problems) {
    LogText log = LogText.read(text);
    Optional<Problem> bad = log.badHeader(file);
    if (bad.isPresent()) {
      problems.add(bad.get());
      return;
    }
    for (CsvText.Row line : log.lines()) {
      LogLine.Read read = LogLine.read(log.columns(), line);
      if (read instanceof LogLine.Unusable not) {
        problems.add(Problem.error(file, line.line(), not.key(), not.wrong(), not.right()));
      } else {
        known(file, ((LogLine.Says) read).entry(), entries, problems);
      }
    }
    log.csv().broken(file, " and much may look overdue").ifPresent(problems::add);
  }

  private void known(String file, LogEntry entry, List<LogEntry> entries, List<Problem> problems) {
    String work = entry.work();
    Optional<String> broken = brokenPage(entry);
    if (broken.isPresent()) {
      problems.add(
          Problem.error(
              file,
              entry.line(),
              LogWords.WORK,
              "is not counted while the page " + broken.get() + " cannot be read",
              "mend that page; this line is right as it is"));
    } else if (!LogEvents.ALL.contains(work) && library.procedure(work).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              entry.line(),
              LogWords.WORK,
              "\"" + work + "\" is neither a procedure nor an event",
              "write a procedure id or one of " + String.join(", ", LogEvents.ALL)));
    } else if (work.equals(LogEvents.LOOKED_AGAIN)
        && entry.of().flatMap(library::procedure).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              entry.line(),
              LogWords.OF,
              "does not name the work that was looked at again",
              "write the procedure's id into the column of"));
    } else {
      entries.add(entry);
    }
  }

  /** The page of the work, when it is there but could not be read. */
  private Optional<String> brokenPage(LogEntry entry) {
    String work =
        entry.work().equals(LogEvents.LOOKED_AGAIN) ? entry.of().orElse("") : entry.work();
    if (!work.matches(AN_ID) || library.page(work).isPresent()) {
      return Optional.empty();
    }
    Path page = folders.articles().resolve("procedures").resolve(work + ".md");
    return Files.isRegularFile(page) ? Optional.of(folders.relative(page)) : Optional.empty();
  }

  private static String hours(LogEntry entry) {
    return LogHours.write(entry.engineHours().orElse(0));
  }

  private static List<Problem> backwards(String file, List<LogEntry> entries) {
    return HourMeter.of(entries).doubted().stream()
        .map(
            entry ->
                Problem.warning(
                    file,
                    entry.line(),
                    LogWords.ENGINE_HOURS,
                    hours(entry)
                        + " on "
                        + entry.date()
                        + " does not go with the readings before and after it, and is not counted",
                    "correct the reading, or write new-meter where the meter was replaced"))
        .toList();
  }
}
