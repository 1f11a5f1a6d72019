package limberboard.desktop.write.complete;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.header.HeaderKey;
import limberboard.library.page.Kind;
import limberboard.library.value.Likelihood;
import limberboard.library.value.Named;
import limberboard.library.value.Word;

/**
 * What may stand at a place of a header, by the records that headers are read into.
 *
 * @param kind of the page
 * @param names the names there are
 */
record HeaderWords(Kind kind, NamesOf names) {
  HeaderWords(Kind kind, Library library) {
    this(kind, new NamesOf(library));
  }

  /** Everything that may stand there, whatever was typed of it. */
  List<Candidate> at(KeyPath path) {
    if (path.keys().isEmpty()) {
      return keys(HeaderKey.of(kind));
    }
    Optional<HeaderKey> key =
        HeaderKey.of(kind).stream()
            .filter(each -> each.name().equals(path.keys().get(0)))
            .findAny();
    return key.map(found -> within(found, path.keys(), path.atKey())).orElse(List.of());
  }

  private List<Candidate> within(HeaderKey top, List<String> keys, boolean atKey) {
    Optional<Named> named = top.names();
    Optional<Named> ofKeys = top.keyNames();
    Type type = entry(top.type());
    for (String key : keys.subList(1, keys.size())) {
      if (isRecord(type)) {
        HeaderKey next = HeaderKey.of(record(type)).get(key);
        if (next == null) {
          return List.of();
        }
        named = next.names();
        ofKeys = next.keyNames();
        type = entry(next.type());
      } else {
        type = entry(ofMap(type));
        ofKeys = Optional.empty();
      }
    }
    if (named.isPresent()) {
      return names.all(named.get());
    }
    if (atKey && ofKeys.isPresent()) {
      return names.all(ofKeys.get()).stream()
          .map(each -> new Candidate(each.letters() + ": ", each.title(), each.detail()))
          .toList();
    }
    if (atKey && isRecord(type)) {
      return keys(HeaderKey.of(record(type)).values());
    }
    return isRecord(type) && type != Likelihood.class
        ? HeaderKey.namedAsText(type).map(names::all).orElse(List.of())
        : choices(type);
  }

  private static List<Candidate> keys(Iterable<HeaderKey> keys) {
    List<Candidate> all = new ArrayList<>();
    keys.forEach(
        key ->
            all.add(
                new Candidate(
                    key.name() + ": ", key.name(), key.isRequired() ? "must be there" : "")));
    return all;
  }

  private static boolean isRecord(Type type) {
    return type instanceof Class<?> plain && plain.isRecord();
  }

  private static Class<? extends Record> record(Type type) {
    return ((Class<?>) type).asSubclass(Record.class);
  }

  /** What each entry of a list is, or what may be left out. */
  private static Type entry(Type type) {
    Type at = type;
    while (at instanceof ParameterizedType generic
        && (generic.getRawType() == List.class || generic.getRawType() == Optional.class)) {
      at = generic.getActualTypeArguments()[0];
    }
    return at;
  }

  private static Type ofMap(Type type) {
    return type instanceof ParameterizedType generic
            && generic.getRawType() instanceof Class<?> raw
            && Map.class.isAssignableFrom(raw)
        ? generic.getActualTypeArguments()[1]
        : Object.class;
  }

  private static List<Candidate> choices(Type type) {
    if (type == boolean.class || type == Boolean.class) {
      return List.of(Candidate.of("true"), Candidate.of("false"));
    }
    if (type == Likelihood.class) {
      return Likelihood.scale().keySet().stream().map(Candidate::of).toList();
    }
    return type instanceof Class<?> plain && plain.isEnum() && Word.class.isAssignableFrom(plain)
        ? Arrays.stream(plain.getEnumConstants())
            .map(each -> Candidate.of(((Word) each).word()))
            .toList()
        : List.of();
  }
}
