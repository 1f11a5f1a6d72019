package limberboard.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.history.Beginning;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.PageHistory;
import limberboard.history.Recorder;
import limberboard.history.Version;
import limberboard.history.parts.Differences;
import limberboard.history.parts.TextParts;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code history}: who changed what and when on a page. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    description = {
      "Says who changed what and when on a page, the latest first; without a page, what has changed"
          + " and is not recorded yet.",
      "Needs a workspace that is, or lies in, a Git repository; --begin makes one."
    })
final class HistoryCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private HistoryOptions options;

  @Parameters(arity = "0..1", paramLabel = "PAGE", description = "The page's id, or its file.")
  private Optional<String> page = Optional.empty();

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Show the page as it stood at the end of that day.")
  private Optional<LocalDate> day = Optional.empty();

  @Option(
      names = "--changes",
      paramLabel = "VERSION",
      description = "Show what that version changed, both texts part by part.")
  private Optional<String> changes = Optional.empty();

  @Option(
      names = "--since",
      paramLabel = "VERSION",
      description = "Show what has changed since that version, recorded or not.")
  private Optional<String> since = Optional.empty();

  @Option(names = "--limit", paramLabel = "N", description = "At most so many versions.")
  private int limit = 50;

  @Option(names = "--begin", description = "Begin a history with all that is there.")
  private boolean begin;

  @Option(
      names = "--record",
      paramLabel = "TEXT",
      description = "Record what has changed, of the page or of all, and say this about it.")
  private Optional<String> record = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  HistoryCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    if (begin) {
      return begin();
    }
    return options.inHistory(
        session,
        place -> {
          if (record.isPresent()) {
            return record(place);
          }
          return page.isPresent() ? of(place) : unrecorded(place);
        });
  }

  private int begin() throws IOException {
    try {
      int files = Beginning.begin(options.folders(session), options.author(Optional.empty()));
      return said(
          new HistoryView.Recorded(true, files),
          "The history is begun, with " + CountWords.of(files, "file", "files") + ".");
    } catch (HistoryTrouble trouble) {
      throw Failure.of(trouble);
    }
  }

  private int record(HistoryFolder place) throws IOException {
    Recorder recorder = new Recorder(place);
    List<String> files = new ArrayList<>(recorder.unrecorded());
    if (page.isPresent()) {
      String path = place.inRepository(new PageHistory(place).find(page.get()));
      files.removeIf(file -> !file.equals(path));
    }
    String text = record.get().strip();
    if (text.isEmpty()) {
      throw new Failure(ExitCode.USAGE, "--record needs a few words on what was changed");
    }
    boolean done = recorder.record(files, text, options.author(Optional.of(place))).isPresent();
    return said(
        new HistoryView.Recorded(done, done ? files.size() : 0),
        done
            ? "Recorded: " + CountWords.of(files.size(), "file", "files") + "."
            : "Nothing has changed since it was last recorded.");
  }

  private int unrecorded(HistoryFolder place) throws IOException {
    List<String> files = new Recorder(place).unrecorded().stream().map(place::inWorkspace).toList();
    StringBuilder text = new StringBuilder();
    text.append(
        files.isEmpty()
            ? "Everything is recorded."
            : "Not recorded yet (limberboard history --record \"WHAT WAS CHANGED\"):");
    files.forEach(file -> text.append(System.lineSeparator()).append("  ").append(file));
    return said(new HistoryView.Unrecorded(files), text.toString());
  }

  private int of(HistoryFolder place) throws IOException {
    PageHistory history = new PageHistory(place);
    String path = history.find(page.orElseThrow());
    List<Version> versions = history.of(path);
    boolean changed = new Recorder(place).unrecorded().contains(place.inRepository(path));
    if (day.isPresent()) {
      return on(history, path, versions);
    }
    if (changes.isPresent()) {
      Version version = PageHistory.named(versions, changes.get());
      int before = versions.indexOf(version) + 1;
      String old = before < versions.size() ? history.text(versions.get(before)).orElse("") : "";
      return differences(path, version, old, history.text(version).orElse(""));
    }
    if (since.isPresent()) {
      Version version = PageHistory.named(versions, since.get());
      return differences(
          path, version, history.text(version).orElse(""), history.now(path).orElse(""));
    }
    HistoryView view = HistoryView.of(history, path, versions, changed, limit);
    return said(view, view.text());
  }

  private int on(PageHistory history, String path, List<Version> versions) throws IOException {
    Optional<Version> found = PageHistory.on(versions, day.orElseThrow(), ZoneId.systemDefault());
    if (found.isEmpty() || !found.get().isThere()) {
      throw new Failure(
          ExitCode.NOT_FOUND,
          page.orElseThrow()
              + " was not there on "
              + day.get()
              + "; limberboard history "
              + page.get()
              + " says when it was");
    }
    String text = history.text(found.get()).orElse("");
    session
        .err()
        .println(
            "As it was written then, to compare. Before any work read the page as it is, with its"
                + " cautions: limberboard read "
                + page.get());
    return said(new HistoryView.Text(path, HistoryView.One.of(found.get(), List.of()), text), text);
  }

  private int differences(String path, Version version, String before, String now) {
    List<Differences.Differing> all =
        Differences.between(TextParts.of(path, before), TextParts.of(path, now));
    StringBuilder text = new StringBuilder();
    for (Differences.Differing each : all) {
      text.append(HistoryView.where(each)).append(System.lineSeparator());
      each.before().lines().forEach(line -> text.append("  - ").append(line).append('\n'));
      each.now().lines().forEach(line -> text.append("  + ").append(line).append('\n'));
    }
    String said = all.isEmpty() ? "No difference." : text.toString().stripTrailing();
    return said(new HistoryView.Compared(path, HistoryView.One.of(version, List.of()), all), said);
  }

  private int said(Object view, String text) {
    if (json) {
      new JsonOutput(session.out()).print(view);
    } else {
      session.out().println(text);
    }
    return ExitCode.OK;
  }
}
