package limberboard.history.parts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What changed from one text to another, in plain words: one for each key, one for each heading.
 */
public final class PartChanges {
  private static final int SHORT = 60;

  private PartChanges() {}

  /** Changes such as {@code minutes: 5 → 10} and {@code changed below “Use”}; none when equal. */
  public static List<String> between(TextParts before, TextParts now) {
    Set<String> changes = new LinkedHashSet<>();
    Set<String> keys = new LinkedHashSet<>(now.header().keySet());
    keys.addAll(before.header().keySet());
    for (String key : keys) {
      if (!before.key(key).equals(now.key(key))) {
        changes.add(key(key, before, now));
      }
    }
    for (Stretch stretch : ListChange.between(before.body(), now.body())) {
      boolean put = blank(before.body().subList(stretch.from(), stretch.to()));
      boolean taken = blank(now.body().subList(stretch.nowFrom(), stretch.nowTo()));
      if (!put || !taken) {
        String heading = now.heading(taken ? stretch.nowFrom() - 1 : stretch.nowFrom());
        changes.add(
            (put ? "added" : taken ? "taken out" : "changed")
                + (heading.isEmpty() ? " in the text" : " below “" + heading + "”"));
      }
    }
    if (changes.isEmpty() && !before.text().equals(now.text())) {
      changes.add("blank lines or remarks");
    }
    return new ArrayList<>(changes);
  }

  private static boolean blank(List<String> pieces) {
    return pieces.stream().allMatch(String::isBlank);
  }

  private static String key(String key, TextParts before, TextParts now) {
    if (now.key(key).isEmpty()) {
      return key + " taken out";
    }
    Optional<String> value = now.value(key).filter(text -> text.length() <= SHORT);
    if (before.key(key).isEmpty()) {
      return key + " added" + value.map(text -> ": " + text).orElse("");
    }
    Optional<String> old = before.value(key).filter(text -> text.length() <= SHORT);
    return old.isPresent() && value.isPresent() && !old.equals(value)
        ? key + ": " + old.get() + " → " + value.get()
        : key + " changed";
  }
}
