package limberboard.desktop.upkeep.entry;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import limberboard.boat.LogEntry;
import limberboard.boat.LogHours;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.library.value.LogEvents;
import limberboard.words.Sentences;

/**
 * Entries of a log in words.
 *
 * @param library names the procedures
 */
public record EntryWords(Library library) {
  /** An entry in a line: {@code 20 May 2026, Replace the locker gasket}. */
  public String line(LogEntry entry) {
    return entry.day() + ", " + work(entry);
  }

  /** One entry in a line; of several how many: {@code 17 lines}, with their day if it is one. */
  String counted(List<LogEntry> entries) {
    return entries.size() == 1 ? line(entries.get(0)) : named(entries);
  }

  private static boolean isOneDay(List<LogEntry> entries) {
    return entries.stream().map(LogEntry::day).distinct().count() == 1;
  }

  /** Entries by their names, as a change is called: {@code “Lay up the boat”, 20 May 2026}. */
  String named(List<LogEntry> entries) {
    LogEntry first = entries.get(0);
    return entries.size() == 1
        ? "“" + work(first) + "”, " + first.day()
        : entries.size() + " lines" + (isOneDay(entries) ? ", " + first.day() : "");
  }

  /** What was done. */
  public String work(LogEntry entry) {
    return entry.work().equals(LogEvents.LOOKED_AGAIN)
        ? "Looked again: " + title(entry.of().orElse(""))
        : title(entry.work());
  }

  /** A procedure's title, or an event in words. */
  public String title(String work) {
    return library.procedure(work).map(Page::title).orElseGet(() -> event(work));
  }

  /** An event in words. */
  public static String event(String event) {
    return switch (event) {
      case LogEvents.READING -> "Reading or remark";
      case LogEvents.NEW_METER -> "New hour meter";
      default -> Sentences.capital(Sentences.spoken(event));
    };
  }

  /** The hour meter's reading, or nothing. */
  public static String hours(OptionalDouble hours) {
    return hours.isPresent() ? LogHours.write(hours.getAsDouble()) : "";
  }

  /** What was counted, or nothing. */
  public static String counted(Map<String, Integer> uses) {
    return uses.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(use -> use.getValue() + " " + use.getKey())
        .collect(Collectors.joining(", "));
  }

  /** Where a problem lies and what is wrong, in words. */
  public static String reason(Problem problem) {
    return problem.file()
        + (problem.line() > 0 ? ", line " + problem.line() : "")
        + ": "
        + problem.wrong()
        + (problem.right().isEmpty() ? "" : ". " + Sentences.capital(problem.right()));
  }

  /** Why a file could not be written, in words. */
  public static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException denied) {
      return denied.getFile() + " may not be written by this user";
    }
    return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
  }
}
