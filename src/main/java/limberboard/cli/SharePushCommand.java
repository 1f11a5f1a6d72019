package limberboard.cli;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.sharing.Sending;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code share push}: sends what this copy has. */
@Command(
    name = "push",
    mixinStandardHelpOptions = true,
    description = {
      "Sends what this copy has to the other; never over what the other has and this one has not."
          + " What is not recorded here is recorded first."
    })
final class SharePushCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private HistoryOptions options;
  @Mixin private ShareOptions share;
  @Mixin private ShareWithOption with;

  @Option(
      names = "--make",
      description = "Make an empty repository where there is none, in a folder.")
  private boolean make;

  SharePushCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    return options.inHistory(
        session,
        place -> {
          share.rememberRole(place);
          Sending.Sent sent =
              new Sending(place, ShareOptions.connection(session))
                  .push(options.author(Optional.of(place)), with.address(session), make);
          if (share.json()) {
            new JsonOutput(session.out())
                .print(new ShareView.Sent(sent.recordedFirst(), sent.versions(), 0));
          } else {
            session
                .out()
                .println(
                    sent.versions() == 0
                        ? "The other copy has all of it already."
                        : "Sent: " + CountWords.of(sent.versions(), "version") + ".");
          }
          return ExitCode.OK;
        });
  }
}
