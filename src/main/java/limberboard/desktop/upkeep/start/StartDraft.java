package limberboard.desktop.upkeep.start;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import limberboard.boat.Typed;
import limberboard.upkeep.start.AnswerText;
import limberboard.upkeep.start.StartAnswer;
import limberboard.words.Sentences;

/** What has been answered of one boat and is not written yet. For the event thread only. */
final class StartDraft {
  private final Map<String, Told> told = new HashMap<>();
  private final Map<String, String> when = new HashMap<>();
  private final Set<String> unfolded = new HashSet<>();

  /** What is chosen beside a question or a piece of work. */
  Told told(String id, Told usual) {
    return told.getOrDefault(id, usual);
  }

  /** What is typed as its day. */
  String when(String id) {
    return when.getOrDefault(id, "");
  }

  /** Whether anything is chosen there. */
  boolean has(String id) {
    return told.containsKey(id);
  }

  /** Whether something is said that a line of the log, or nothing at all, follows from. */
  boolean says(String id) {
    Told choice = told(id, Told.NOT_KNOWN);
    return choice.from().isPresent() || choice == Told.NOT_ABOARD;
  }

  void tell(String id, Told choice) {
    told.put(id, choice);
  }

  void when(String id, String text) {
    when.put(id, text);
  }

  /** Whether each piece of work of a question is shown. */
  boolean isUnfolded(String question) {
    return unfolded.contains(question);
  }

  void turn(String question) {
    if (!unfolded.remove(question)) {
      unfolded.add(question);
    }
  }

  /** Whether anything was said that would be lost. */
  boolean isTouched() {
    return told.keySet().stream().anyMatch(this::says);
  }

  /** What is wrong with an answer, in a sentence; empty when nothing is. */
  String problem(String id, AnswerText reader) {
    return told(id, Told.NOT_KNOWN)
        .from()
        .flatMap(from -> reader.known(from, when(id)).bad())
        .map(bad -> capital(bad.wrong()) + ": " + bad.right() + ".")
        .orElse("");
  }

  private static String capital(String text) {
    return Sentences.capital(text);
  }

  /** All that is answered and can be read. */
  Map<String, StartAnswer> answers(AnswerText reader) {
    Map<String, StartAnswer> answers = new LinkedHashMap<>();
    told.forEach(
        (id, choice) -> {
          if (choice == Told.NOT_KNOWN) {
            answers.put(id, StartAnswer.NOT_KNOWN);
          } else if (choice == Told.NOT_ABOARD) {
            answers.put(id, StartAnswer.NOT_ABOARD);
          } else if (choice.from().isPresent()) {
            Typed<StartAnswer.Known> known = reader.known(choice.from().get(), when(id));
            known.good().ifPresent(answer -> answers.put(id, answer));
          }
        });
    return answers;
  }
}
