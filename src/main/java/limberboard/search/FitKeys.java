package limberboard.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.value.Condition;

/**
 * The different conditions of a library's pages, each with a key that the index knows it by: what
 * does not fit a boat is told by judging each condition once, however many pages have it. Is not
 * changed after it was made.
 */
final class FitKeys {
  /** The field of the keys. */
  static final String FIELD = "fits";

  private static final String ALL = "all";
  private static final Fit NOTHING_ASKED = new Fit.Yes("");

  private final Map<String, Condition> conditions = new HashMap<>();

  /** The conditions of a library. */
  FitKeys(Library library) {
    Set<Condition> different = new HashSet<>();
    library.pages().forEach(page -> different.add(page.head().fits()));
    different.remove(Condition.ALWAYS);
    different.forEach(condition -> conditions.put(key(condition), condition));
  }

  /** The key of a condition; equal conditions have equal keys. */
  static String key(Condition condition) {
    return condition.isEmpty() ? ALL : new Digest().add(condition.toString()).hex();
  }

  /** Whether what has this key fits a boat; a key that is not known fits. */
  Fit judge(String key, Fitting fitting) {
    Condition condition = conditions.get(key);
    return condition == null ? NOTHING_ASKED : fitting.judge(condition);
  }

  /** The keys of the conditions that a boat does not meet. */
  List<String> notFitting(Fitting fitting) {
    List<String> keys = new ArrayList<>();
    conditions.forEach(
        (key, condition) -> {
          if (!fitting.fits(condition)) {
            keys.add(key);
          }
        });
    return keys;
  }
}
