package limberboard.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code share}: shares the workspace with another copy of it. */
@Command(
    name = "share",
    mixinStandardHelpOptions = true,
    description = {
      "Shares the workspace with another copy through an ordinary Git remote: a folder, ssh or"
          + " https. Only when asked; no password is ever kept."
    })
final class ShareCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "share needs pull, push or copy");
  }
}
