package limberboard.desktop.base;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.library.problem.PlainTrouble;

/**
 * What came of work that may go wrong in ways that are told in words, and are no failure of the
 * program. Immutable.
 *
 * @param outcome what came of it
 * @param wrong otherwise what is wrong, and how to go on
 */
public record Tried<T>(Optional<T> outcome, String wrong) {
  /** Work that may go wrong so. */
  @FunctionalInterface
  public interface Work<T> {
    /** Does it. */
    T get() throws IOException;
  }

  /** Tries it; what goes wrong in other ways is thrown. */
  public static <T> Tried<T> of(Work<T> work) throws IOException {
    try {
      return new Tried<>(Optional.of(work.get()), "");
    } catch (PlainTrouble trouble) {
      String end = trouble.right().isEmpty() ? "" : "; " + trouble.right();
      return new Tried<>(Optional.empty(), trouble.wrong() + end + ".");
    }
  }

  /** Hands the outcome on, or what is wrong. */
  public void told(Consumer<? super T> good, Consumer<String> bad) {
    outcome.ifPresentOrElse(good, () -> bad.accept(wrong));
  }
}
