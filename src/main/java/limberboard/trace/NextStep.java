package limberboard.trace;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Model.Access;

/** What to do next. */
public sealed interface NextStep {
  /** Which of a fault's steps it is, whatever its cost and reason are just now. */
  Which which();

  /**
   * Which step.
   *
   * @param kind {@code check}, {@code make-safe}, {@code mend} or {@code yard}
   * @param id of the check made or made safe, of the mend's procedure, or {@code yard}
   */
  record Which(String kind, String id) {}

  /** As {@link Which#id}. */
  default String id() {
    return which().id();
  }

  /** What to do, in words. */
  String text();

  /** What it costs the owner in minutes, with the access still to be opened. */
  double minutes();

  /** Why this comes next. */
  String why();

  /** What must be opened first, in order. */
  List<Access> toOpen();

  /** The cautions of this step, beside those that come before any question. */
  List<WorkCaution> cautions();

  /** What to do so that it is safe, at a check that comes first for safety; empty elsewhere. */
  default Optional<String> safety() {
    return Optional.empty();
  }

  /** As {@link Which#kind}. */
  default String kind() {
    return which().kind();
  }

  /**
   * A check to make.
   *
   * @param check the check
   * @param minutes with the access still to be opened
   * @param toOpen what must be opened first, in order
   * @param why why it comes next
   */
  record DoCheck(FaultCheck check, double minutes, List<Access> toOpen, String why)
      implements NextStep {
    /** Copies the access. */
    public DoCheck {
      toOpen = List.copyOf(toOpen);
    }

    @Override
    public Which which() {
      return new Which("check", check.id());
    }

    @Override
    public String text() {
      return check.ask();
    }

    @Override
    public Optional<String> safety() {
      return check.check().safety();
    }

    @Override
    public List<WorkCaution> cautions() {
      return check.cautions();
    }
  }

  /**
   * What a check that comes first asks for is made safe: it could not be told, or the answer does
   * not say that it is safe. Its minutes are in those of the check.
   *
   * @param check the check
   * @param why why it comes next
   */
  record MakeSafe(FaultCheck check, String why) implements NextStep {
    @Override
    public Which which() {
      return new Which("make-safe", check.id());
    }

    @Override
    public String text() {
      return "Make it safe before anything else";
    }

    /** What to do. */
    public String how() {
      return safety().orElse("");
    }

    @Override
    public Optional<String> safety() {
      return check.check().safety();
    }

    @Override
    public List<WorkCaution> cautions() {
      return check.cautions();
    }

    @Override
    public double minutes() {
      return 0;
    }

    @Override
    public List<Access> toOpen() {
      return List.of();
    }
  }

  /**
   * A mend to try; only ever one that an owner may do.
   *
   * @param cause the cause it would cure
   * @param minutes with the access still to be opened
   * @param toOpen what must be opened first, in order
   * @param why why it comes next
   */
  record DoMend(FaultCause cause, double minutes, List<Access> toOpen, String why)
      implements NextStep {
    /** Copies the access. */
    public DoMend {
      toOpen = List.copyOf(toOpen);
    }

    @Override
    public Which which() {
      return new Which("mend", cause.mend());
    }

    @Override
    public String text() {
      return cause.mendTitle();
    }

    @Override
    public List<WorkCaution> cautions() {
      return cause.mendCautions();
    }
  }

  /**
   * The fault is handed to the yard.
   *
   * @param minutes what that costs the owner
   * @param why why it comes next
   */
  record CallYard(double minutes, String why) implements NextStep {
    @Override
    public Which which() {
      return new Which("yard", "yard");
    }

    @Override
    public String text() {
      return "Hand it to the yard, with what has been found so far";
    }

    @Override
    public List<Access> toOpen() {
      return List.of();
    }

    @Override
    public List<WorkCaution> cautions() {
      return List.of();
    }
  }
}
