package limberboard.cli;

import java.io.PrintWriter;
import limberboard.boat.CaseOutcome;
import limberboard.boat.CaseWriter;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Symptom;
import limberboard.words.Minutes;
import limberboard.words.Sentences;

/** Prints cases. */
record CaseOutput(CommandContext session, boolean json) {

  /** Says what came of writing a case. */
  int written(CaseWriter.Outcome outcome) {
    if (outcome instanceof CaseWriter.Refused refused) {
      throw new Failure(ExitCode.IO, refused.problem().toString());
    }
    CaseWriter.Written written = (CaseWriter.Written) outcome;
    if (json) {
      new JsonOutput(session.out()).print(CaseView.of(written.recorded()));
    } else {
      session.out().println("Written: " + written.file());
      line(written.recorded());
      if (written.recorded().isOpen()) {
        session
            .out()
            .println("It is open: limberboard case close " + written.recorded().id() + " ends it.");
      }
    }
    return ExitCode.OK;
  }

  /** A case in two lines. */
  void line(RecordedCase recorded) {
    PrintWriter out = session.out();
    out.println(recorded.id() + ": " + what(recorded));
    String built =
        recorded.boat().built().stream().mapToObj(year -> " of " + year).findFirst().orElse("");
    out.println(
        "  a "
            + Sentences.capital(Sentences.spoken(recorded.boat().model()))
            + built
            + recorded.boat().water().map(water -> " in " + water.spoken() + " water").orElse("")
            + recorded.boat().use().map(use -> ", " + use.spoken()).orElse("")
            + recorded.end().minutes().stream()
                .mapToObj(minutes -> "; " + Minutes.words(minutes) + " in all")
                .findFirst()
                .orElse(""));
  }

  private static String what(RecordedCase recorded) {
    String found = recorded.end().found();
    String cause =
        recorded
            .cause()
            .map(
                id ->
                    id.equals(Symptom.SOMETHING_ELSE) && !found.isEmpty()
                        ? "something else, " + found
                        : Sentences.spoken(id))
            .orElse("not known yet");
    return cause
        + recorded.end().outcome().map(CaseOutcome::spoken).map(how -> ", " + how).orElse("");
  }
}
