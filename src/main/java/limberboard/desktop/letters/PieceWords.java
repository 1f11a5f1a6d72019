package limberboard.desktop.letters;

import java.util.Map;
import limberboard.words.Sentences;

/** What the pieces of a draft are called. */
final class PieceWords {
  private static final Map<String, String> NAMES =
      Map.ofEntries(
          Map.entry("greeting", "Greeting"),
          Map.entry("urgent", "What cannot wait"),
          Map.entry("emergency", "What may be an emergency"),
          Map.entry("opening", "Opening"),
          Map.entry("model-only", "Her own boat is not known"),
          Map.entry("which-boat", "Which boat"),
          Map.entry("which-symptom", "Which symptom"),
          Map.entry("not-covered", "No page about it"),
          Map.entry("no-fault", "No fault"),
          Map.entry("closing", "Closing"),
          Map.entry("fault", "Which fault"),
          Map.entry("told", "What the owner has told"),
          Map.entry("likely", "What it may be"),
          Map.entry("clash", "What does not go together"),
          Map.entry("cautions", "Before the cautions"),
          Map.entry("caution", "Caution"),
          Map.entry("checks", "Before the checks"),
          Map.entry("check", "Check"),
          Map.entry("write-back", "How to write back"),
          Map.entry("mend", "Which work"),
          Map.entry("work", "The work"),
          Map.entry("after-mend", "After the work"),
          Map.entry("again", "When to look again"),
          Map.entry("safe", "Making safe"),
          Map.entry("yard", "The yard"),
          Map.entry("licensed", "Who may do it"),
          Map.entry("yard-work", "What the yard would do"));

  private PieceWords() {}

  /** What a piece is called: {@code Caution: gas}. */
  static String of(String id) {
    String[] parts = id.split("/");
    for (int i = 0; i < parts.length; i++) {
      String name = NAMES.get(parts[i]);
      if (name != null) {
        boolean more = i + 1 < parts.length && !parts[i + 1].matches("[0-9]+");
        return more ? name + ": " + Sentences.spoken(parts[i + 1]) : name;
      }
    }
    return Sentences.capital(Sentences.spoken(parts[parts.length - 1]));
  }
}
