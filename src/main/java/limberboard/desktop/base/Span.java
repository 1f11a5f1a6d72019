package limberboard.desktop.base;

import java.util.List;

/** What lies between two entries of a list, as when a range of lines is ticked. */
public final class Span {
  private Span() {}

  /**
   * All from the one to the other, whichever comes first, both included.
   *
   * @return nothing where either is not in the list
   */
  public static <T> List<T> of(List<T> all, T from, T to) {
    int a = all.indexOf(from);
    int b = all.indexOf(to);
    return a < 0 || b < 0
        ? List.of()
        : List.copyOf(all.subList(Math.min(a, b), Math.max(a, b) + 1));
  }
}
