package limberboard.drill.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillStep;
import limberboard.drill.StepReader;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/** A drill as its file has it; the keys are the components' names. */
record DrillEntry(
    @Required String symptom,
    @Required String boat,
    @Required LocalDate on,
    @Required String seed,
    String hides,
    String hints,
    @Required String stamp,
    Optional<String> student,
    Optional<String> key,
    List<String> steps) {
  private static final String NUMBER = "[0-9]{1,18}";

  DrillEntry {
    hides = EmptyValues.text(hides);
    hints = EmptyValues.text(hints);
    student = EmptyValues.optional(student);
    key = EmptyValues.optional(key);
    steps = EmptyValues.list(steps);
  }

  static DrillEntry of(KeptDrill drill) {
    return new DrillEntry(
        drill.order().symptom(),
        drill.order().boat(),
        drill.order().on(),
        Long.toString(drill.order().seed()),
        drill.order().hides().isEmpty() ? "" : Integer.toString(drill.order().hides().getAsInt()),
        Integer.toString(drill.order().hints()),
        drill.stamp(),
        drill.student(),
        drill.key(),
        drill.steps().stream().map(DrillStep::text).toList());
  }

  /** The keys in order, as they are written. */
  Map<String, Object> keys() {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("symptom", symptom);
    keys.put("boat", boat);
    keys.put("on", on.toString());
    keys.put("seed", Long.parseLong(seed));
    if (!hides.isEmpty()) {
      keys.put("hides", Integer.parseInt(hides));
    }
    if (!hints.equals("0")) {
      keys.put("hints", Integer.parseInt(hints));
    }
    keys.put("stamp", stamp);
    student.ifPresent(name -> keys.put("student", name));
    key.ifPresent(each -> keys.put("key", each));
    if (!steps.isEmpty()) {
      keys.put("steps", steps);
    }
    return keys;
  }

  /**
   * What it says.
   *
   * @throws IllegalArgumentException when a number or a step is none; the message says which
   */
  KeptDrill kept() {
    if (!seed.matches(NUMBER)) {
      throw new IllegalArgumentException("seed: \"" + seed + "\" is no whole number from 0");
    }
    if (!hides.isEmpty() && !hides.matches("[1-9][0-9]{5}")) {
      throw new IllegalArgumentException("hides: \"" + hides + "\" is no number of six digits");
    }
    if (!hints.isEmpty() && !hints.matches("[0-9]{1,2}")) {
      throw new IllegalArgumentException("hints: \"" + hints + "\" is no number from 0 to 99");
    }
    List<DrillStep> read = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      try {
        read.add(StepReader.read(steps.get(i)));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("steps: step " + (i + 1) + ": " + e.getMessage(), e);
      }
    }
    int allowed = hints.isEmpty() ? 0 : Integer.parseInt(hints);
    OptionalInt hidden =
        hides.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(hides));
    DrillOrder order = new DrillOrder(symptom, boat, on, Long.parseLong(seed), allowed, hidden);
    return new KeptDrill(order, stamp, student, key, read);
  }
}
