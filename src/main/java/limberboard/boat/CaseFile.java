package limberboard.boat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.library.problem.Limits;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.library.value.Within;

/** A case as its file has it; the keys are the components' names. */
record CaseFile(
    @Required @Names(Named.SYMPTOM) String symptom,
    Optional<String> cause,
    @Required LocalDate date,
    @Required @Names(Named.MODEL) String model,
    @Within(least = Limits.FIRST_YEAR, most = Limits.LAST_YEAR) OptionalInt built,
    Map<String, String> equipment,
    Optional<Water> water,
    Optional<Use> use,
    Optional<String> boat,
    Map<String, String> answers,
    List<String> cantTell,
    Optional<CaseOutcome> outcome,
    String found,
    @Names(Named.PROCEDURE) Optional<String> mend,
    OptionalDouble minutes,
    OptionalDouble mendMinutes,
    OptionalDouble cost,
    String note) {
  /** What a file's name ends in. */
  static final String ENDING = ".yaml";

  CaseFile {
    cause = EmptyValues.optional(cause);
    built = built == null ? OptionalInt.empty() : built;
    equipment = EmptyValues.map(equipment);
    water = EmptyValues.optional(water);
    use = EmptyValues.optional(use);
    boat = EmptyValues.optional(boat);
    answers = EmptyValues.map(answers);
    cantTell = EmptyValues.list(cantTell);
    outcome = EmptyValues.optional(outcome);
    found = EmptyValues.text(found);
    mend = EmptyValues.optional(mend);
    minutes = minutes == null ? OptionalDouble.empty() : minutes;
    mendMinutes = mendMinutes == null ? OptionalDouble.empty() : mendMinutes;
    cost = cost == null ? OptionalDouble.empty() : cost;
    note = EmptyValues.text(note);
  }

  RecordedCase recorded(Path file) {
    String name = file.getFileName().toString();
    return new RecordedCase(
        name.substring(0, name.lastIndexOf('.')),
        symptom,
        cause,
        date,
        new CaseBoat(model, built, equipment, water, use, boat),
        answers,
        cantTell,
        new CaseEnd(outcome, found, mend, minutes, mendMinutes, cost),
        note);
  }
}
