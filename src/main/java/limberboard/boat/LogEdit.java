package limberboard.boat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.library.file.CsvText;
import limberboard.library.file.CsvText.Row;
import limberboard.library.problem.Problem;

/**
 * Works out the text of a log in which lines are added, replaced or taken out. Every other line
 * stays as it is, to the letter, and what comes out has been read again: it says what was meant.
 *
 * @param name what problems call the log
 * @param was the log before
 */
record LogEdit(String name, LogText was) {
  private static final String NOTHING_WRITTEN = "; nothing was written";

  /** What comes of it. */
  sealed interface Made {}

  /**
   * The new text.
   *
   * @param text the text
   * @param taken what was taken out, with the lines it had
   * @param put what was written, with the lines it has
   */
  record Text(String text, List<LogEntry> taken, List<LogEntry> put) implements Made {}

  /** Why there is none. */
  record Not(Problem problem) implements Made {}

  /** A piece of the text that is replaced. */
  private record Patch(int from, int to, String with) {}

  /**
   * The log with some entries taken out and others put in. As many taken as put: each is put in the
   * place of the one taken out. Otherwise what is put goes to the end.
   *
   * @param letters how a line is to be written, where that is known
   */
  Made swap(List<LogEntry> taken, List<LogEntry> put, List<Optional<String>> letters) {
    Optional<Problem> unfit = unfit(put);
    if (unfit.isPresent()) {
      return new Not(unfit.get());
    }
    List<Integer> places = new ArrayList<>();
    for (LogEntry entry : taken) {
      OptionalInt place = was.place(entry, places);
      if (place.isEmpty()) {
        return new Not(gone(entry));
      }
      places.add(place.getAsInt());
    }
    List<String> columns = new ArrayList<>(was.columns());
    put.stream()
        .flatMap(entry -> LogLine.further(entry).stream())
        .filter(column -> !columns.contains(column))
        .forEach(
            column -> {
              if (!columns.contains(column)) {
                columns.add(column);
              }
            });
    Optional<Problem> narrow =
        columns.size() > was.columns().size() ? narrow(columns) : Optional.empty();
    return narrow.<Made>map(Not::new).orElseGet(() -> made(columns, places, put, letters));
  }

  /** What is wrong with the log or with what is to be written. */
  private Optional<Problem> unfit(List<LogEntry> put) {
    if (was.csv().brokenFrom().isPresent()) {
      return Optional.of(
          Problem.error(
              name,
              was.csv().brokenFrom().getAsInt(),
              "",
              "cannot be read to its end",
              "close the double quote that is open on this line first, so that nothing is lost"
                  + NOTHING_WRITTEN));
    }
    Optional<Problem> header = was.badHeader(name);
    if (header.isPresent()) {
      return header.map(
          bad -> Problem.error(name, 1, bad.key(), bad.wrong(), bad.right() + NOTHING_WRITTEN));
    }
    return put.stream()
        .flatMap(entry -> LogLine.wrong(entry).stream())
        .findFirst()
        .map(bad -> Problem.error(name, 0, bad.key(), bad.wrong(), bad.right() + NOTHING_WRITTEN));
  }

  private Problem gone(LogEntry entry) {
    return Problem.error(
        name,
        0,
        LogWords.WORK,
        "has no line with " + entry.work() + " on " + entry.date() + " as it was",
        "look at the log; it was changed meanwhile");
  }

  /** Why no column can be added: its name, or a line that is too long and would fill it. */
  private Optional<Problem> narrow(List<String> columns) {
    for (String column : columns.subList(was.columns().size(), columns.size())) {
      Optional<Typed.Bad<String>> bad =
          LogWords.isNamed(column) ? Optional.empty() : LogCount.name(column).bad();
      if (bad.isPresent()) {
        return Optional.of(
            Problem.error(name, 1, column, bad.get().wrong(), bad.get().right() + NOTHING_WRITTEN));
      }
    }
    return was.lines().stream()
        .filter(line -> line.cells().size() > was.columns().size())
        .findFirst()
        .map(
            line ->
                Problem.error(
                    name,
                    line.line(),
                    "",
                    "has more fields than the first line, and a new column would change what it"
                        + " says",
                    "mend this line first: put text that holds a comma in double quotes"
                        + NOTHING_WRITTEN));
  }

  private Made made(
      List<String> columns,
      List<Integer> places,
      List<LogEntry> put,
      List<Optional<String>> letters) {
    String text = was.text();
    String end = CsvText.lineEnd(text);
    List<String> written = new ArrayList<>();
    for (int i = 0; i < put.size(); i++) {
      String usual = LogLine.write(columns, put.get(i), end);
      written.add(i < letters.size() ? letters.get(i).orElse(usual) : usual);
    }
    boolean inPlace = places.size() == put.size();
    List<Patch> patches = new ArrayList<>();
    if (columns.size() > was.columns().size()) {
      int at = was.header().to();
      List<String> more = columns.subList(was.columns().size(), columns.size());
      patches.add(new Patch(at, at, "," + String.join(",", more)));
    }
    for (int i = 0; i < places.size(); i++) {
      Row line = was.lines().get(places.get(i));
      patches.add(
          inPlace
              ? new Patch(line.from(), line.to(), written.get(i))
              : new Patch(line.from(), line.next(), ""));
    }
    if (!inPlace && !written.isEmpty()) {
      String before = text.endsWith("\n") || text.endsWith("\r") ? "" : end;
      patches.add(
          new Patch(text.length(), text.length(), before + String.join(end, written) + end));
    }
    return read(patched(patches), columns, places, written, inPlace);
  }

  private String patched(List<Patch> patches) {
    StringBuilder text = new StringBuilder(was.text());
    patches.stream()
        .sorted(Comparator.comparingInt(Patch::from).reversed())
        .forEach(patch -> text.replace(patch.from(), patch.to(), patch.with()));
    return text.toString();
  }

  /** Reads what was made and holds it against what was meant. */
  private Made read(
      String text,
      List<String> columns,
      List<Integer> places,
      List<String> written,
      boolean inPlace) {
    LogText is = LogText.read(text);
    List<String> meant = was.letters();
    List<Integer> at = new ArrayList<>();
    if (inPlace) {
      for (int i = 0; i < places.size(); i++) {
        meant.set(places.get(i), written.get(i));
        at.add(places.get(i));
      }
    } else {
      places.stream().sorted(Comparator.reverseOrder()).forEach(i -> meant.remove((int) i));
      for (String line : written) {
        at.add(meant.size());
        meant.add(line);
      }
    }
    List<LogEntry> taken =
        places.stream().map(i -> was.entry(was.lines().get(i)).orElseThrow()).toList();
    if (!is.columns().equals(columns) || !is.letters().equals(meant)) {
      return new Not(
          Problem.error(
              name,
              0,
              "",
              "would not be read again as it is meant",
              "write the line by hand" + NOTHING_WRITTEN));
    }
    List<LogEntry> put = at.stream().map(i -> is.entry(is.lines().get(i)).orElseThrow()).toList();
    return new Text(text, taken, put);
  }
}
