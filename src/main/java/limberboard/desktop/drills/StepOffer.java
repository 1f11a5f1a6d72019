package limberboard.desktop.drills;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.drill.DrillStep;

/**
 * One thing that can be done in a drill. Says nothing of what is hidden, and nothing of chances.
 *
 * @param kind what kind it is
 * @param id id of the check, cause or access; empty where there is one of the kind only
 * @param title what it is called
 * @param facts minutes, what has to be opened, whose work it is
 * @param cautions the cautions of the work, which stand before it
 * @param found what came of it when it was done before, or empty
 */
record StepOffer(
    Kind kind, String id, String title, String facts, List<WorkCaution> cautions, String found) {

  /** Kinds of things that can be done. */
  enum Kind {
    /** A check is made. */
    CHECK("Checks", "Do the check"),
    /** What comes first for safety is made safe. */
    SECURE("Make it safe", "It is done, and it is safe now"),
    /** A cause is mended. */
    MEND("Mends, by what would be the cause", "Mend it"),
    /** Something is opened. */
    OPEN("Open or lift only; what is opened stays open", "Do it"),
    /** The yard gets it. */
    YARD("Hand it over, ask, or give up", "Hand it to the yard"),
    /** A hint is asked for. */
    HINT("Hand it over, ask, or give up", "Take the hint"),
    /** The student gives up. */
    GIVE_UP("Hand it over, ask, or give up", "Give up");

    private final String group;
    private final String deed;

    Kind(String group, String deed) {
      this.group = group;
      this.deed = deed;
    }

    /** The heading of its group. */
    String group() {
      return group;
    }

    /** What the button says that does it. */
    String deed() {
      return deed;
    }
  }

  /** Copies the list. */
  StepOffer {
    cautions = List.copyOf(cautions);
  }

  /** By which it is told apart from others. */
  String key() {
    return kind + " " + id;
  }

  /** Whether it is said how sure one is before it is done. */
  boolean asksHowSure() {
    return kind == Kind.MEND;
  }

  /**
   * The step.
   *
   * @param named the cause that the student names, with how sure; for a mend it must be there
   */
  DrillStep step(Optional<DrillStep.Named> named) {
    return switch (kind) {
      case CHECK -> new DrillStep.Ask(id);
      case SECURE -> new DrillStep.Secure(id);
      case MEND -> new DrillStep.Mend(id, named.orElseThrow().sure());
      case OPEN -> new DrillStep.Open(id);
      case YARD -> new DrillStep.HandOver(named);
      case HINT -> new DrillStep.Hint();
      case GIVE_UP -> new DrillStep.GiveUp();
    };
  }
}
