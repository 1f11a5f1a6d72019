package limberboard.letters.recognise;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person says a letter should give; kept beside the letter, so that it teaches.
 *
 * @param fault whether it tells of a fault
 * @param boat the boat's id, where it says which
 * @param model the model's id, where it says which
 * @param urgent whether it is urgent
 * @param dangers what is urgent in it, where a person has said so
 * @param symptoms the symptoms it tells of; empty where the library has none for it
 * @param answers symptom to check to the answer already given; empty where nobody has said what is
 *     answered
 */
public record Expected(
    boolean fault,
    Optional<String> boat,
    Optional<String> model,
    boolean urgent,
    List<Danger> dangers,
    List<String> symptoms,
    Optional<Map<String, Map<String, String>>> answers) {
  /** Copies the collections. */
  public Expected {
    dangers = List.copyOf(dangers);
    symptoms = List.copyOf(symptoms);
    answers = answers.map(Map::copyOf);
  }

  /** The answers already given for a symptom; empty where nobody has said what is answered. */
  Optional<Map<String, String>> answers(String symptom) {
    return answers.map(all -> all.getOrDefault(symptom, Map.of()));
  }

  /**
   * What is urgent in a letter.
   *
   * @param what what is dangerous
   * @param words words of the letter that say so
   */
  public record Danger(String what, String words) {}

  static Expected of(ObjectNode root) {
    List<String> symptoms = new ArrayList<>();
    root.path("symptoms").forEach(each -> symptoms.add(each.asText()));
    List<Danger> dangers = new ArrayList<>();
    for (JsonNode each : root.path("danger")) {
      each.properties().forEach(e -> dangers.add(new Danger(e.getKey(), e.getValue().asText())));
    }
    Map<String, Map<String, String>> answers = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> symptom : root.path("answers").properties()) {
      Map<String, String> given = new LinkedHashMap<>();
      symptom.getValue().properties().forEach(e -> given.put(e.getKey(), e.getValue().asText()));
      answers.put(symptom.getKey(), given);
    }
    return new Expected(
        root.path("kind").asText().equals("fault"),
        id(root.path("boat")),
        id(root.path("model")),
        root.path("urgent").asText().equals("true"),
        dangers,
        symptoms,
        root.has("answers") ? Optional.of(answers) : Optional.empty());
  }

  private static Optional<String> id(JsonNode node) {
    return node.isTextual() && !node.asText().equals("null")
        ? Optional.of(node.asText())
        : Optional.empty();
  }
}
