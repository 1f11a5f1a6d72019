package limberboard.cli;

import java.util.List;
import picocli.CommandLine.Option;

/** The option {@code --answer}, shared by commands that look at a trace. */
final class AnswersOption {
  @Option(
      names = "--answer",
      paramLabel = "CHECK=ANSWER",
      description =
          "What has been found; ? as the answer means it could not be told, CHECK=made-safe that"
              + " what comes first for safety was made safe, CAUSE=not-cured that its mend was made"
              + " and did not cure.")
  private List<String> answers = List.of();

  boolean isEmpty() {
    return answers.isEmpty();
  }

  /** What is asked for when these are the answers. */
  TraceRequest request(String symptom, BoatOption boat) {
    return new TraceRequest(
        symptom, boat.id(), answers.stream().map(TraceRequest.Found::parse).toList());
  }
}
