package limberboard.drill;

import java.util.Optional;

/** One thing that a student does in a drill. */
public sealed interface DrillStep {
  /** As it is typed and kept: {@code check taste}, {@code mend stem-fitting 70}. */
  String text();

  /**
   * Makes a check.
   *
   * @param check check id
   */
  record Ask(String check) implements DrillStep {
    @Override
    public String text() {
      return "check " + check;
    }
  }

  /**
   * Opens something.
   *
   * @param access access id
   */
  record Open(String access) implements DrillStep {
    @Override
    public String text() {
      return "open " + access;
    }
  }

  /**
   * Takes a caution's step: says that it is read and that what it asks for is done.
   *
   * @param caution caution id
   */
  record Heed(String caution) implements DrillStep {
    @Override
    public String text() {
      return "caution " + caution;
    }
  }

  /**
   * Makes safe what a check asks for that comes first.
   *
   * @param check check id
   */
  record Secure(String check) implements DrillStep {
    @Override
    public String text() {
      return "safe " + check;
    }
  }

  /**
   * Mends a cause.
   *
   * @param cause cause id
   * @param sure how sure the student is that this is the cause, in per cent, 0 to 100
   */
  record Mend(String cause, int sure) implements DrillStep {
    @Override
    public String text() {
      return "mend " + cause + " " + sure;
    }
  }

  /**
   * Hands the fault to the yard.
   *
   * @param cause the cause that the yard is told, with how sure the student is
   */
  record HandOver(Optional<Named> cause) implements DrillStep {
    @Override
    public String text() {
      return "yard" + cause.map(named -> " " + named.cause() + " " + named.sure()).orElse("");
    }
  }

  /**
   * A cause that is named to the yard.
   *
   * @param cause cause id
   * @param sure how sure the student is, in per cent, 0 to 100
   */
  record Named(String cause, int sure) {}

  /** Asks for a hint. */
  record Hint() implements DrillStep {
    @Override
    public String text() {
      return "hint";
    }
  }

  /** Gives up: the yard gets the fault with no name to it. */
  record GiveUp() implements DrillStep {
    @Override
    public String text() {
      return "give-up";
    }
  }
}
