package limberboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.library.file.TextFile;
import limberboard.sharing.PullOutcome;
import limberboard.sharing.PullWish;
import limberboard.sharing.Settlement;
import limberboard.sharing.Sharing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code share pull}: takes what the other copy has. */
@Command(
    name = "pull",
    mixinStandardHelpOptions = true,
    description = {
      "Takes what the other copy has and merges it, by header key and paragraph. What is not"
          + " recorded here is recorded first.",
      "Where both changed the same part, both texts are shown and no file is changed until each is"
          + " chosen."
    })
final class SharePullCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private HistoryOptions options;
  @Mixin private ShareOptions share;
  @Mixin private ShareWithOption with;

  @Option(
      names = "--settle",
      paramLabel = "PAGE[:PART]=CHOICE",
      description =
          "What holds where both changed the same: ours, theirs, both (of paragraphs) or before."
              + " May be repeated.")
  private List<String> settled = List.of();

  @Option(
      names = "--settled",
      paramLabel = "FILE",
      description = "A file with one such choice a line.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--anyway",
      description = "Merge though the other copy was rewritten, or begun apart.")
  private boolean anyway;

  SharePullCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    return options.inHistory(session, this::pull);
  }

  private int pull(HistoryFolder place) throws IOException {
    share.rememberRole(place);
    PullWish wish =
        new PullWish(
            options.author(Optional.of(place)), settlement(), with.address(session), anyway);
    PullOutcome outcome = new Sharing(place, ShareOptions.connection(session)).pull(wish);
    if (share.json()) {
      new JsonOutput(session.out()).print(ShareView.of(outcome));
    } else {
      ShareView.lines(outcome).forEach(session.out()::println);
    }
    return outcome instanceof PullOutcome.Open ? ExitCode.PROBLEMS : ExitCode.OK;
  }

  private Settlement settlement() throws HistoryTrouble {
    List<String> lines = new ArrayList<>();
    if (file.isPresent()) {
      Path from = session.folder().resolve(file.get());
      if (!Files.exists(from)) {
        throw new Failure(ExitCode.NOT_FOUND, "there is no file " + from);
      }
      TextFile.Result read = TextFile.read(from, file.get().toString());
      read.problems()
          .forEach(
              problem -> {
                throw new Failure(ExitCode.IO, problem.toString());
              });
      lines.addAll(read.text().lines().toList());
    }
    lines.addAll(settled);
    return Settlement.read(lines);
  }
}
