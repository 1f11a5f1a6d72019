package limberboard.search;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One thing a question asks for, with everything that may stand for it in a page.
 *
 * @param terms stems and marks of word groups, each with how surely it means the same, above 0 to 1
 * @param weight how much the slot counts
 * @param faint whether it is too vague to decide on its own whether a page answers
 * @param fault whether it tells that something is wrong
 */
record Slot(Map<String, Float> terms, double weight, boolean faint, boolean fault) {
  /** Copies the terms. */
  Slot {
    terms = Collections.unmodifiableMap(new LinkedHashMap<>(terms));
  }
}
