package limberboard.library.header;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Head;
import limberboard.library.page.Kind;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Within;

/**
 * A key that may stand in a header, as the record that it is read into declares it. Whoever reads,
 * checks, shows or changes headers by their keys asks here. Immutable.
 *
 * @param name the key as it is written, in lower case with hyphens
 * @param component the record's component
 */
public record HeaderKey(String name, RecordComponent component) {
  /** The last of the keys that every page has and that stand before those of its kind. */
  private static final String LAST_OF_HEAD = "fits";

  /** Whether it must be there. */
  public boolean isRequired() {
    return component.isAnnotationPresent(Required.class);
  }

  /** The bounds of a whole number, if it has any. */
  public Optional<Within> within() {
    return Optional.ofNullable(component.getAnnotation(Within.class));
  }

  /** What its value, or each entry of its list, is the name of, if it names anything. */
  public Optional<Named> names() {
    return annotated(false);
  }

  /** What the keys of its mapping are the names of, if they name anything. */
  public Optional<Named> keyNames() {
    return annotated(true);
  }

  private Optional<Named> annotated(boolean keys) {
    return Optional.ofNullable(component.getAnnotation(Names.class))
        .filter(names -> names.keys() == keys)
        .map(Names::value);
  }

  /** What it is read as. */
  public Type type() {
    return component.getGenericType();
  }

  /** The keys of a mapping that is read into a record, by name, in the record's order. */
  public static Map<String, HeaderKey> of(Class<? extends Record> type) {
    return of(List.of(type));
  }

  /**
   * The keys of a mapping that is read into several records; where two have a key of one name, the
   * first has it.
   */
  static Map<String, HeaderKey> of(List<Class<? extends Record>> types) {
    Map<String, HeaderKey> keys = new LinkedHashMap<>();
    for (Class<? extends Record> type : types) {
      for (RecordComponent component : type.getRecordComponents()) {
        String name = name(component);
        keys.putIfAbsent(name, new HeaderKey(name, component));
      }
    }
    return keys;
  }

  /** All keys of pages of a kind, in the order in which they are best written. */
  public static List<HeaderKey> of(Kind kind) {
    Map<String, HeaderKey> details = of(kind.details().asSubclass(Record.class));
    List<HeaderKey> keys = new ArrayList<>();
    boolean first = true;
    for (HeaderKey key : of(Head.class).values()) {
      if (!details.containsKey(key.name())) {
        keys.add(key);
      }
      if (first && key.name().equals(LAST_OF_HEAD)) {
        keys.addAll(details.values());
        first = false;
      }
    }
    return keys;
  }

  /** Whether a record may be written as one text, its name or sentence alone. */
  public static boolean isWrittenAsText(Type type) {
    return type instanceof Class<?> plain
        && plain.isRecord()
        && Arrays.stream(plain.getMethods())
            .map(method -> method.getAnnotation(JsonCreator.class))
            .anyMatch(made -> made != null && made.mode() == JsonCreator.Mode.DELEGATING);
  }

  /** What a record that is written as one text is then the name of, if of anything. */
  public static Optional<Named> namedAsText(Type type) {
    return isWrittenAsText(type)
        ? of(((Class<?>) type).asSubclass(Record.class)).values().stream()
            .flatMap(key -> key.names().stream())
            .findFirst()
        : Optional.empty();
  }

  private static String name(RecordComponent component) {
    JsonProperty property = component.getAccessor().getAnnotation(JsonProperty.class);
    return property != null && !property.value().isEmpty()
        ? property.value()
        : component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }
}
