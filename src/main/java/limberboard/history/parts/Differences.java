package limberboard.history.parts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Two texts beside each other, part by part, only where they differ. */
public final class Differences {
  private Differences() {}

  /**
   * A part that differs.
   *
   * @param key the key of the header, or empty
   * @param heading the heading above it in the body, or empty
   * @param before its text before; empty when it was not there
   * @param now its text now; empty when it is gone
   */
  public record Differing(String key, String heading, String before, String now) {}

  /** The parts that differ, the header's first. */
  public static List<Differing> between(TextParts before, TextParts now) {
    List<Differing> all = new ArrayList<>();
    Set<String> keys = new LinkedHashSet<>(now.header().keySet());
    keys.addAll(before.header().keySet());
    for (String key : keys) {
      if (!before.key(key).equals(now.key(key))) {
        all.add(new Differing(key, "", before.key(key).orElse(""), now.key(key).orElse("")));
      }
    }
    for (Stretch stretch : ListChange.between(before.body(), now.body())) {
      all.add(
          new Differing(
              "",
              now.heading(stretch.nowFrom()),
              String.join("", before.body().subList(stretch.from(), stretch.to())),
              String.join("", now.body().subList(stretch.nowFrom(), stretch.nowTo()))));
    }
    return all;
  }
}
