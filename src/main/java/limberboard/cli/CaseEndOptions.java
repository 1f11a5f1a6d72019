package limberboard.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Cause;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Nearest;
import picocli.CommandLine.Option;

/** What {@code case new} and {@code case close} can be told of how a case ended. */
final class CaseEndOptions {
  @Option(
      names = "--cause",
      paramLabel = "CAUSE",
      description = "What it was: a cause of the symptom, or something-else.")
  private Optional<String> cause = Optional.empty();

  @Option(
      names = "--found",
      paramLabel = "WORDS",
      description = "In words what it was, where no cause of the page was it.")
  private Optional<String> found = Optional.empty();

  @Option(
      names = "--mend",
      paramLabel = "PROCEDURE",
      description = "What was done; the mend of the cause if not given.")
  private Optional<String> mend = Optional.empty();

  @Option(
      names = "--minutes",
      paramLabel = "N",
      description = "What it took in all, from the first question.")
  private Optional<Double> minutes = Optional.empty();

  @Option(
      names = "--mend-minutes",
      paramLabel = "N",
      description = "What the mend alone took, with opening up.")
  private Optional<Double> mendMinutes = Optional.empty();

  @Option(names = "--cost", paramLabel = "N", description = "What it cost, in your own money.")
  private Optional<Double> cost = Optional.empty();

  @Option(
      names = "--outcome",
      paramLabel = "OUTCOME",
      description =
          "mended, not-mended, handed-over or open; if not given, open without a cause, otherwise"
              + " mended.")
  private Optional<String> outcome = Optional.empty();

  @Option(names = "--note", paramLabel = "TEXT", description = "What was learnt; no names.")
  private Optional<String> note = Optional.empty();

  /** A case with what was said of its end. */
  RecordedCase ended(RecordedCase before, Symptom symptom) {
    Optional<String> proven = (found.isPresent() ? somethingElse() : cause).or(before::cause);
    CaseOutcome how = outcome(proven.isPresent());
    CaseEnd end = before.end();
    Optional<String> done = mend.or(end::mend);
    if (done.isEmpty() && (how == CaseOutcome.MENDED || how == CaseOutcome.NOT_MENDED)) {
      done = proven.flatMap(symptom::cause).map(Cause::mend);
    }
    CaseEnd after =
        new CaseEnd(
            Optional.of(how),
            found.orElse(end.found()).strip(),
            done,
            number("--minutes", minutes, end.minutes()),
            number("--mend-minutes", mendMinutes, end.mendMinutes()),
            number("--cost", cost, end.cost()));
    return before.ended(proven, after).noted(note.map(String::strip).orElse(before.note()));
  }

  private Optional<String> somethingElse() {
    if (cause.filter(Predicate.not(Symptom.SOMETHING_ELSE::equals)).isPresent()) {
      throw new Failure(
          ExitCode.USAGE,
          "--found says what it was when no cause of the page was it; leave out --cause "
              + cause.get()
              + ", or write --note");
    }
    return Optional.of(Symptom.SOMETHING_ELSE);
  }

  private CaseOutcome outcome(boolean known) {
    if (outcome.isEmpty()) {
      return known ? CaseOutcome.MENDED : CaseOutcome.OPEN;
    }
    String said = outcome.get().toLowerCase(Locale.ROOT);
    List<String> words = Stream.of(CaseOutcome.values()).map(CaseOutcome::word).toList();
    CaseOutcome how =
        Stream.of(CaseOutcome.values())
            .filter(each -> each.word().equals(said))
            .findFirst()
            .orElseThrow(
                () ->
                    new Failure(
                        ExitCode.USAGE,
                        "there is no outcome \""
                            + outcome.get()
                            + "\"; "
                            + Nearest.advice(
                                said, words, "it is one of " + String.join(", ", words))));
    if (!known && how != CaseOutcome.OPEN) {
      throw new Failure(
          ExitCode.USAGE,
          "name what it was with --cause or --found; without that a case stays open");
    }
    return how;
  }

  private static OptionalDouble number(
      String option, Optional<Double> said, OptionalDouble before) {
    if (said.isEmpty()) {
      return before;
    }
    if (!(said.get() >= 0 && Double.isFinite(said.get()))) {
      throw new Failure(ExitCode.USAGE, option + " is 0 or more, not " + said.get());
    }
    return OptionalDouble.of(said.get());
  }
}
