package limberboard.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.boat.RecordedCase;
import limberboard.library.value.Word;

/** A recorded case as {@code --json} prints it; the keys are documented and stay. */
record CaseView(
    String id,
    String symptom,
    Optional<String> cause,
    String found,
    String date,
    String model,
    OptionalInt built,
    Map<String, String> equipment,
    Optional<String> water,
    Optional<String> use,
    Optional<String> boat,
    Map<String, String> answers,
    List<String> cantTell,
    Optional<String> outcome,
    Optional<String> mend,
    OptionalDouble minutes,
    OptionalDouble mendMinutes,
    OptionalDouble cost,
    String note) {
  static CaseView of(RecordedCase recorded) {
    return new CaseView(
        recorded.id(),
        recorded.symptom(),
        recorded.cause(),
        recorded.end().found(),
        recorded.date().toString(),
        recorded.boat().model(),
        recorded.boat().built(),
        recorded.boat().equipment(),
        recorded.boat().water().map(Word::word),
        recorded.boat().use().map(Word::word),
        recorded.boat().id(),
        recorded.answers(),
        recorded.cantTell(),
        recorded.end().outcome().map(Word::word),
        recorded.end().mend(),
        recorded.end().minutes(),
        recorded.end().mendMinutes(),
        recorded.end().cost(),
        recorded.note());
  }
}
