package limberboard.cli;

import java.io.IOException;
import java.util.Map;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.print.sheet.ReplyText;
import limberboard.trace.Trace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code trace}: follows a symptom to its cause. */
@Command(
    name = "trace",
    mixinStandardHelpOptions = true,
    description = {
      "Follows a symptom to its cause, one question at a time.",
      "With --answer (repeated), --reply or --json it prints where the trace stands and asks"
          + " nothing. With - it answers one request a line from standard input by one JSON line"
          + " each; a request is SYMPTOM [boat=BOAT] [check=answer ...]."
    })
final class TraceCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private TraceOptions asked;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--reply",
      description = "Print the next step in words for a letter, with all its cautions.")
  private boolean reply;

  TraceCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    Workspace read = asked.workspace(session);
    TraceMaker tracing = new TraceMaker(session, read);
    if (asked.symptom().equals("-")) {
      return answerLines(read, tracing);
    }
    Trace trace = asked.trace(tracing);
    if (json) {
      new JsonOutput(session.out()).print(TraceView.of(trace, read.cases()));
    } else if (reply) {
      session.out().print(new ReplyText(read.library(), trace, trace.next()).plain());
    } else if (asked.hasAnswers()) {
      TraceText text = new TraceText(session.out());
      text.state(trace);
      text.earlier(TraceView.earlier(trace, read.cases()));
    } else {
      new Interview(session, read.library()).run(trace);
    }
    return ExitCode.OK;
  }

  private int answerLines(Workspace read, TraceMaker tracing) throws IOException {
    JsonOutput out = new JsonOutput(session.out());
    for (String line = session.in().readLine(); line != null; line = session.in().readLine()) {
      try {
        Trace trace = tracing.trace(TraceRequest.parse(line, asked.boat()));
        out.print(TraceView.of(trace, read.cases()));
      } catch (Failure e) {
        out.print(Map.of("error", e.getMessage()));
      }
    }
    return ExitCode.OK;
  }
}
