package limberboard.library.header;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.Required;

/** Looks for required components that could not be read, all the way down a record. */
final class RequiredValues {
  private RequiredValues() {}

  /** Whether no required component of the value, or of anything within it, is missing. */
  static boolean allPresent(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(RequiredValues::allPresent).orElse(true);
    }
    if (value instanceof Collection<?> items) {
      return items.stream().allMatch(RequiredValues::allPresent);
    }
    if (value instanceof Map<?, ?> map) {
      return allPresent(map.values());
    }
    return !(value instanceof Record parts) || componentsPresent(parts);
  }

  private static boolean componentsPresent(Record parts) {
    for (RecordComponent component : parts.getClass().getRecordComponents()) {
      Object value = value(parts, component);
      if (value == null ? component.isAnnotationPresent(Required.class) : !allPresent(value)) {
        return false;
      }
    }
    return true;
  }

  private static Object value(Record parts, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(parts);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot look into " + parts.getClass(), e);
    }
  }
}
