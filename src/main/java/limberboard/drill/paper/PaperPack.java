package limberboard.drill.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillStep;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * Drills for a class without computers: one for each student, on the same symptom and boat with
 * other hidden faults. Everything that can be done has a number; the student says the number, the
 * trainer reads the answer from the key.
 *
 * @param fault the fault
 * @param drills one for each sheet, in order
 */
public record PaperPack(Fault fault, List<Drill> drills) {
  /** The most sheets in a pack. */
  public static final int MOST = 200;

  private static final int APART = 2;

  /** Copies the list. */
  public PaperPack {
    drills = List.copyOf(drills);
  }

  /**
   * Something that can be done, with its number on every sheet.
   *
   * @param number from 1
   * @param check the check, if it is one
   * @param cause the cause whose mend it is, if it is one
   */
  public record Numbered(int number, Optional<FaultCheck> check, Optional<FaultCause> cause) {
    /** It as a step, for a mend with this certainty in per cent. */
    public DrillStep step(int sure) {
      return check
          .<DrillStep>map(each -> new DrillStep.Ask(each.id()))
          .orElseGet(() -> new DrillStep.Mend(cause.orElseThrow().id(), sure));
    }
  }

  /**
   * Makes a pack; the same seed makes the same one. Neighbours have other faults: a seed whose
   * cause one of the two sheets before has is passed over, where there are causes enough.
   *
   * @param fault the fault
   * @param seed what chance comes from, 0 or more
   * @param students how many sheets, 1 to {@value #MOST}
   * @throws IllegalArgumentException when the number of sheets is out of its range
   */
  public static PaperPack of(Fault fault, long seed, int students) {
    if (students < 1 || students > MOST) {
      throw new IllegalArgumentException(
          "a pack is for 1 to " + MOST + " students, not for " + students);
    }
    List<Drill> drills = new ArrayList<>();
    for (long next = seed; drills.size() < students; next++) {
      Drill drill =
          Drill.of(
              new DrillOrder(
                  fault.page().id(), fault.fitting().boat().id(), fault.fitting().on(), next, 0),
              fault);
      boolean few = fault.causes().size() <= APART + 1;
      if (few || next - seed > 100L * MOST || isNew(drill, drills)) {
        drills.add(drill);
      }
    }
    return new PaperPack(fault, drills);
  }

  private static boolean isNew(Drill drill, List<Drill> drills) {
    return drills.subList(Math.max(0, drills.size() - APART), drills.size()).stream()
        .noneMatch(before -> before.hiddenCause().equals(drill.hiddenCause()));
  }

  /** Everything that can be done, the checks first, in the page's order. */
  public List<Numbered> numbers() {
    List<Numbered> all = new ArrayList<>();
    for (FaultCheck check : fault.checks()) {
      all.add(new Numbered(all.size() + 1, Optional.of(check), Optional.empty()));
    }
    for (FaultCause cause : fault.causes()) {
      if (!cause.isSomethingElse()) {
        all.add(new Numbered(all.size() + 1, Optional.empty(), Optional.of(cause)));
      }
    }
    return all;
  }
}
