package limberboard.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.history.PageHistory;
import limberboard.history.Restorer;
import limberboard.history.Version;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code restore}: brings an earlier version of a page back. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description = {
      "Brings an earlier version of a page back, as a new change.",
      "What stands in the page now is recorded first if it is not, so that it can be brought back"
          + " too."
    })
final class RestoreCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private HistoryOptions options;

  @Parameters(index = "0", paramLabel = "PAGE", description = "The page's id, or its file.")
  private String page;

  @Parameters(
      index = "1",
      paramLabel = "VERSION",
      description = "The version, as history PAGE shows it.")
  private String version;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  RestoreCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    return options.inHistory(
        session,
        place -> {
          PageHistory history = new PageHistory(place);
          String path = history.find(page);
          List<Version> versions = history.of(path);
          Version asked = PageHistory.named(versions, version);
          Restorer.Restored restored =
              new Restorer(place).restore(path, asked, options.author(Optional.of(place)));
          if (json) {
            new JsonOutput(session.out()).print(restored);
          } else {
            restored
                .kept()
                .ifPresent(
                    id ->
                        session
                            .out()
                            .println("What stood there is kept as version " + id.substring(0, 10)));
            session
                .out()
                .println(
                    restored.now().isPresent()
                        ? "Restored: " + path + " as in version " + asked.shortId()
                        : path + " stands so already");
          }
          return ExitCode.OK;
        });
  }
}
