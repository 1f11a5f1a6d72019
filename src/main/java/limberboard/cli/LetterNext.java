package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.Trace;

/**
 * What to do next about the symptoms of a letter, on its boat, after the answers that it gives.
 *
 * @param recogniser what read the letter
 * @param workspace pages, boats and cases
 */
record LetterNext(Recogniser recogniser, Workspace workspace) {

  /**
   * The traces of the symptoms whose answers were read; none where the letter names neither a boat
   * nor a model.
   */
  List<Trace> traces(Recognition recognition) {
    List<Trace> traces = new ArrayList<>();
    Optional<Fitting> fitting = recogniser.fitting(recognition);
    for (Suspect suspect : recognition.symptoms()) {
      Optional<Page<Symptom>> symptom = workspace.library().symptom(suspect.id());
      boolean read = recognition.answers().containsKey(suspect.id());
      if (read && fitting.isPresent() && symptom.isPresent()) {
        if (fitting.get().fits(symptom.get().head().fits())) {
          traces.add(trace(symptom.get(), fitting.get(), recognition.answers()));
        }
      }
    }
    return traces;
  }

  private Trace trace(
      Page<Symptom> symptom, Fitting fitting, Map<String, List<GivenAnswer>> answers) {
    Fault fault = Fault.of(symptom, fitting, workspace.library(), workspace.cases());
    Trace trace = Trace.begin(fault);
    for (GivenAnswer given : answers.get(symptom.id())) {
      if (fault.hasCheck(given.check())) {
        trace = trace.answer(given.check(), given.answer());
      }
    }
    return trace;
  }
}
