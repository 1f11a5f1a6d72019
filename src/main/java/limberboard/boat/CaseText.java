package limberboard.boat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import limberboard.library.header.YamlScalar;
import limberboard.library.header.YamlText;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.value.Word;

/** Cases as YAML: the text of a new one, and one that is completed. Stateless. */
final class CaseText {
  private static final String ANSWERS = "answers";
  private static final String EQUIPMENT = "equipment";

  private CaseText() {}

  /** The text of a new case's file. */
  static String of(RecordedCase recorded) {
    StringBuilder text = new StringBuilder();
    keys(recorded)
        .forEach(
            (key, value) -> {
              text.append(key).append(':');
              if (value instanceof Map<?, ?> map) {
                map.forEach(
                    (name, said) ->
                        text.append("\n  ").append(word(name)).append(": ").append(word(said)));
              } else {
                text.append(' ').append(value);
              }
              text.append('\n');
            });
    return text.toString();
  }

  /**
   * The text of a case's file that is to say another case; only the keys that differ are touched.
   *
   * @param text the file's text
   * @param was the case that it says
   * @param is the case that it is to say
   */
  static String changed(String text, RecordedCase was, RecordedCase is) throws Unchangeable {
    YamlText yaml = new YamlText(text);
    Map<String, Object> before = keys(was);
    Map<String, Object> after = keys(is);
    List<String> earlier = new ArrayList<>();
    for (Map.Entry<String, Object> entry : after.entrySet()) {
      String key = entry.getKey();
      Object old = before.get(key);
      if (!Objects.equals(old, entry.getValue())) {
        yaml =
            old instanceof Map<?, ?> map && entry.getValue() instanceof Map<?, ?> now
                ? changed(yaml, key, map, now)
                : set(yaml, key, entry.getValue(), earlier);
      }
      earlier.add(key);
    }
    for (String key : before.keySet()) {
      if (!after.containsKey(key)) {
        yaml = yaml.without(List.of(key));
      }
    }
    return yaml.text();
  }

  private static YamlText set(YamlText yaml, String key, Object value, List<String> earlier)
      throws Unchangeable {
    String written = value instanceof Map<?, ?> map ? flow(map) : value.toString();
    return yaml.written(List.of(key)).isPresent()
        ? yaml.replaced(List.of(key), written)
        : yaml.added(key, written, earlier);
  }

  private static YamlText changed(YamlText text, String key, Map<?, ?> was, Map<?, ?> is)
      throws Unchangeable {
    YamlText yaml = text;
    for (Map.Entry<?, ?> entry : is.entrySet()) {
      String name = entry.getKey().toString();
      if (!was.containsKey(name)) {
        yaml = yaml.addedTo(key, word(name), word(entry.getValue()));
      } else if (!entry.getValue().equals(was.get(name))) {
        yaml = yaml.replaced(List.of(key, name), word(entry.getValue()));
      }
    }
    for (Object name : was.keySet()) {
      if (!is.containsKey(name)) {
        yaml = yaml.without(List.of(key, name.toString()));
      }
    }
    return yaml;
  }

  /** The keys of a case's file in order, each with its value as YAML, or with a mapping. */
  private static Map<String, Object> keys(RecordedCase recorded) {
    Map<String, Object> keys = new LinkedHashMap<>();
    CaseBoat boat = recorded.boat();
    CaseEnd end = recorded.end();
    keys.put("symptom", word(recorded.symptom()));
    recorded.cause().ifPresent(cause -> keys.put("cause", word(cause)));
    if (!end.found().isEmpty()) {
      keys.put("found", YamlScalar.text(end.found()));
    }
    keys.put("date", word(LogDay.write(recorded.date())));
    keys.put("model", word(boat.model()));
    boat.built().ifPresent(built -> keys.put("built", Integer.toString(built)));
    if (!boat.equipment().isEmpty()) {
      keys.put(EQUIPMENT, boat.equipment());
    }
    boat.water().ifPresent(water -> keys.put("water", word(water)));
    boat.use().ifPresent(use -> keys.put("use", word(use)));
    boat.id().ifPresent(id -> keys.put("boat", word(id)));
    if (!recorded.answers().isEmpty()) {
      keys.put(ANSWERS, recorded.answers());
    }
    if (!recorded.cantTell().isEmpty()) {
      keys.put(
          "cant-tell",
          recorded.cantTell().stream()
              .map(CaseText::word)
              .collect(Collectors.joining(", ", "[", "]")));
    }
    end.mend().ifPresent(mend -> keys.put("mend", word(mend)));
    number(keys, "minutes", end.minutes());
    number(keys, "mend-minutes", end.mendMinutes());
    number(keys, "cost", end.cost());
    end.outcome().ifPresent(outcome -> keys.put("outcome", word(outcome)));
    Optional.of(recorded.note())
        .filter(note -> !note.isEmpty())
        .ifPresent(note -> keys.put("note", YamlScalar.text(note)));
    return keys;
  }

  private static void number(Map<String, Object> keys, String key, OptionalDouble number) {
    number.ifPresent(
        value ->
            keys.put(
                key,
                value == Math.rint(value) && Math.abs(value) < Integer.MAX_VALUE
                    ? Long.toString((long) value)
                    : Double.toString(value)));
  }

  private static String flow(Map<?, ?> map) {
    return map.entrySet().stream()
        .map(entry -> word(entry.getKey()) + ": " + word(entry.getValue()))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String word(Object value) {
    return YamlScalar.word(value instanceof Word word ? word.word() : value.toString());
  }
}
