package limberboard.writing.form;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.Period;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.library.header.HeaderKey;
import limberboard.library.page.Kind;
import limberboard.library.value.Likelihood;
import limberboard.library.value.Named;
import limberboard.library.value.Word;

/**
 * A field that the header of a kind of page can have, as the record declares it that the header is
 * read into. There is no other list of fields. Immutable.
 *
 * @param key the key, as it is written
 * @param kind what it holds
 * @param entries of a list, what each entry holds; otherwise the same as {@code kind}
 * @param many whether it is a list, of whatever
 * @param required whether it must be there
 * @param choices the words there are to choose from; empty where anything may be written
 * @param names what it, or each entry, is the name of
 */
public record FieldDeclaration(
    String key,
    FieldKind kind,
    FieldKind entries,
    boolean many,
    boolean required,
    List<String> choices,
    Optional<Named> names) {

  private static final Map<Kind, List<FieldDeclaration>> ALL = new EnumMap<>(Kind.class);

  static {
    for (Kind kind : Kind.values()) {
      ALL.put(kind, HeaderKey.of(kind).stream().map(FieldDeclaration::of).toList());
    }
  }

  /** The fields of a kind of page, in the order in which they are best written. */
  public static List<FieldDeclaration> of(Kind kind) {
    return ALL.get(kind);
  }

  private static FieldDeclaration of(HeaderKey key) {
    Type type = key.type();
    Type entry = type;
    if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
      entry = generic.getActualTypeArguments()[0];
    } else if (type instanceof ParameterizedType generic
        && generic.getRawType() == Optional.class) {
      entry = generic.getActualTypeArguments()[0];
      type = entry;
    }
    Type each = entry;
    Optional<Named> names = key.names().or(() -> HeaderKey.namedAsText(each));
    FieldKind entries = names.isPresent() ? FieldKind.NAME : kind(entry);
    boolean list = type != entry;
    return new FieldDeclaration(
        key.name(),
        list && entries != FieldKind.NESTED ? FieldKind.LIST : entries,
        entries,
        list,
        key.isRequired(),
        choices(entry),
        names);
  }

  private static FieldKind kind(Type type) {
    if (type == String.class || HeaderKey.isWrittenAsText(type)) {
      return FieldKind.TEXT;
    }
    if (type == Integer.class
        || type == Double.class
        || type == OptionalInt.class
        || type == OptionalDouble.class) {
      return FieldKind.NUMBER;
    }
    if (type == boolean.class || type == Boolean.class) {
      return FieldKind.YES_NO;
    }
    if (type == Period.class) {
      return FieldKind.PERIOD;
    }
    if (!choices(type).isEmpty()) {
      return FieldKind.CHOICE;
    }
    boolean many =
        type instanceof ParameterizedType generic && generic.getRawType() == Map.class
            || type instanceof Class<?> plain && plain.isRecord() && !isOneText(plain);
    return many ? FieldKind.NESTED : FieldKind.TEXT;
  }

  /** Records of the values, such as a range, that are one text in a header. */
  private static boolean isOneText(Class<?> type) {
    return Arrays.stream(type.getMethods())
        .anyMatch(
            method ->
                List.of("parse", "of").contains(method.getName())
                    && method.getReturnType().isAssignableFrom(type)
                    && Arrays.equals(method.getParameterTypes(), new Class<?>[] {String.class}));
  }

  private static List<String> choices(Type type) {
    if (type == boolean.class || type == Boolean.class) {
      return List.of("true", "false");
    }
    if (type == Likelihood.class) {
      return List.copyOf(Likelihood.scale().keySet());
    }
    return type instanceof Class<?> plain && plain.isEnum() && Word.class.isAssignableFrom(plain)
        ? Arrays.stream(plain.getEnumConstants()).map(each -> ((Word) each).word()).toList()
        : List.of();
  }
}
