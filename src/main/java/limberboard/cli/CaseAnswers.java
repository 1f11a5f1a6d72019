package limberboard.cli;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Check;
import limberboard.library.page.Symptom;

/** Answers of a case as they are typed: {@code check=answer}, {@code check=?} for can't tell. */
record CaseAnswers(List<String> typed) {

  /** A case with these answers as well. */
  RecordedCase added(RecordedCase recorded, Symptom symptom) {
    Map<String, String> answers = new LinkedHashMap<>(recorded.answers());
    Set<String> cantTell = new LinkedHashSet<>(recorded.cantTell());
    for (String text : typed) {
      TraceRequest.Found found = TraceRequest.Found.parse(text);
      Check check =
          symptom
              .check(found.check())
              .orElseThrow(
                  () ->
                      Failure.unknown(
                          "check",
                          found.check(),
                          symptom.checks().stream().map(Check::id).toList(),
                          "the symptom has others"));
      answers.remove(check.id());
      cantTell.remove(check.id());
      if (found.answer().equals(TraceRequest.CANT_TELL)) {
        cantTell.add(check.id());
      } else if (check.answers().contains(found.answer())) {
        answers.put(check.id(), found.answer());
      } else {
        throw Failure.unknown(
            "answer",
            found.answer(),
            check.answers(),
            "the answers are " + String.join(", ", check.answers()));
      }
    }
    return recorded.answered(answers, List.copyOf(cantTell));
  }
}
