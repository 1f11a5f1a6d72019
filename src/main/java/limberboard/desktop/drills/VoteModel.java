package limberboard.desktop.drills;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import limberboard.desktop.base.Observed;

/** The votes of a class with one computer, step by step. For the event thread only. */
final class VoteModel extends Observed {
  private final Map<Integer, ClassVote> votes = new TreeMap<>();
  private ClassVote now = ClassVote.NONE;
  private boolean on;

  VoteModel() {}

  /** Whether the class votes. */
  boolean isOn() {
    return on;
  }

  /** Lets the class vote, or not. */
  void on(boolean voting) {
    on = voting;
    now = ClassVote.NONE;
    tell();
  }

  /** The hands noted for the next step. */
  ClassVote now() {
    return now;
  }

  /** Notes hands for the next step. */
  void note(ClassVote vote) {
    now = vote;
    tell();
  }

  /** Lets the class vote, and notes hands, 1 to 9, for a step. */
  void hands(String step, int number) {
    if (!on) {
      on(true);
    }
    note(now.digit(step, number));
  }

  /** A step has been taken, whose number among all steps is this: what was voted belongs to it. */
  void taken(int step) {
    if (!now.hands().isEmpty()) {
      votes.put(step, now);
    }
    now = ClassVote.NONE;
  }

  /** What was voted before a step, by its number among all steps. */
  Optional<ClassVote> of(int step) {
    return Optional.ofNullable(votes.get(step));
  }

  /** Another drill is begun; whether the class votes stays. */
  void forget() {
    votes.clear();
    now = ClassVote.NONE;
  }
}
