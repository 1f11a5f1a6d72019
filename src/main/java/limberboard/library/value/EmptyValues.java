package limberboard.library.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Turns what a file left out into empty values, so that no record holds a null. */
public final class EmptyValues {
  private EmptyValues() {}

  /**
   * An immutable list; entries that could not be read (null) have been reported and are dropped.
   */
  public static <T> List<T> list(List<T> list) {
    if (list == null) {
      return List.of();
    }
    List<T> present = new ArrayList<>(list);
    present.removeIf(Objects::isNull);
    return Collections.unmodifiableList(present);
  }

  /** An immutable map in the file's order, without entries that could not be read. */
  public static <K, V> Map<K, V> map(Map<K, V> map) {
    if (map == null) {
      return Map.of();
    }
    Map<K, V> present = new LinkedHashMap<>(map);
    present.values().removeIf(Objects::isNull);
    return Collections.unmodifiableMap(present);
  }

  /** The same for a map of lists, whose unreadable entries are dropped too. */
  public static <K, V> Map<K, List<V>> lists(Map<K, List<V>> map) {
    Map<K, List<V>> present = new LinkedHashMap<>(map(map));
    present.replaceAll((key, list) -> list(list));
    return Collections.unmodifiableMap(present);
  }

  /** An optional that is there. */
  @SuppressWarnings("OptionalAssignedToNull")
  public static <T> Optional<T> optional(Optional<T> optional) {
    return optional == null ? Optional.empty() : optional;
  }

  public static String text(String text) {
    return text == null ? "" : text;
  }

  public static Condition condition(Condition condition) {
    return condition == null ? Condition.ALWAYS : condition;
  }
}
