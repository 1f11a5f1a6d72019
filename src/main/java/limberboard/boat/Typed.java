package limberboard.boat;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a text in a field says, or why it says nothing.
 *
 * @param <T> what it says
 */
public sealed interface Typed<T> {
  /**
   * It can be read.
   *
   * @param value what it says
   */
  record Good<T>(T value) implements Typed<T> {}

  /**
   * It cannot be read.
   *
   * @param wrong what is wrong with it, to follow the field's name
   * @param right what would be right
   */
  record Bad<T>(String wrong, String right) implements Typed<T> {}

  /** What it says; empty when it cannot be read. */
  default Optional<T> good() {
    return this instanceof Good<T> good ? Optional.of(good.value()) : Optional.empty();
  }

  /** What is wrong and what would be right; empty when it can be read. */
  default Optional<Bad<T>> bad() {
    return this instanceof Bad<T> bad ? Optional.of(bad) : Optional.empty();
  }

  /** The same said of something made of it. */
  default <U> Typed<U> map(Function<T, U> make) {
    if (this instanceof Good<T> good) {
      return new Good<>(make.apply(good.value()));
    }
    Bad<T> bad = (Bad<T>) this;
    return new Bad<>(bad.wrong(), bad.right());
  }
}
