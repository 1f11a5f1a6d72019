package limberboard.trace;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A value computed when it is first asked for, once, from any thread.
 *
 * @param <T> the value
 */
final class Lazy<T> {
  private final Supplier<T> compute;
  private Optional<T> value = Optional.empty();

  Lazy(Supplier<T> compute) {
    this.compute = compute;
  }

  synchronized T get() {
    if (value.isEmpty()) {
      value = Optional.of(compute.get());
    }
    return value.get();
  }
}
