package limberboard.writing.symptom;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A check as it stands in a header, finished or not. What is not there is empty.
 *
 * @param number its place in the page, from 0
 * @param id its id, which stays when it asks something else
 * @param ask the question
 * @param how how to do it
 * @param minutes how long it takes, as it is written
 * @param answers its answers
 * @param finds answer to cause id to how likely that answer then is, as it is written
 */
public record TableCheck(
    int number,
    String id,
    String ask,
    String how,
    String minutes,
    List<String> answers,
    Map<String, Map<String, String>> finds) {
  /** Copies the collections, in order. */
  public TableCheck {
    answers = List.copyOf(answers);
    finds = Collections.unmodifiableMap(new LinkedHashMap<>(finds));
  }

  /** How likely an answer is when a cause is there, as it is written; empty when nothing is. */
  public Optional<String> likelihood(String answer, String cause) {
    return Optional.ofNullable(finds.getOrDefault(answer, Map.of()).get(cause));
  }
}
