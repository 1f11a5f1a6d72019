package limberboard.cli;

import java.util.concurrent.Callable;
import limberboard.trace.Trace;
import limberboard.trace.review.Sensitivity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code sensitivity}: which estimates of a symptom page are worth measuring first. */
@Command(
    name = "sensitivity",
    mixinStandardHelpOptions = true,
    description = {
      "Says which estimates of a symptom page decide what is checked or mended first.",
      "Every weight and likelihood is made twice and half of what it is, one at a time; those that"
          + " change the first step are listed by what it then costs to do what is proposed now."
          + " This takes up to a minute."
    })
final class SensitivityCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private TraceOptions asked;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  SensitivityCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Trace trace = asked.trace(new TraceMaker(session, asked.workspace(session)));
    session.err().println("trying every estimate at twice and half of what it is");
    session.err().flush();
    Sensitivity sensitivity = Sensitivity.of(trace);
    if (json) {
      new JsonOutput(session.out()).print(SensitivityView.of(sensitivity));
    } else {
      new SensitivityText(session.out()).print(sensitivity);
    }
    return ExitCode.OK;
  }
}
