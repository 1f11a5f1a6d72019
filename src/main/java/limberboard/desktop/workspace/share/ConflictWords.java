package limberboard.desktop.workspace.share;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.desktop.parts.Card.Part;
import limberboard.history.parts.ListChange;
import limberboard.history.parts.Stretch;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;

/** A part that both copies changed, in words, and the words in which its texts differ. */
final class ConflictWords {
  private static final Pattern WORD = Pattern.compile("\\S+|\\s+");

  private ConflictWords() {}

  /** Where in its file the part is. */
  static String where(Conflict conflict) {
    if (conflict.part().equals(Conflict.PAGE)) {
      return "The whole page";
    } else if (conflict.part().equals(Conflict.NAME)) {
      return "Its name";
    } else if (conflict.mayBeBoth()) {
      return conflict.heading().isEmpty() ? "In the text" : "Below “" + conflict.heading() + "”";
    }
    return "Header: " + conflict.part();
  }

  /** What was chosen. */
  static String chosen(Choice choice) {
    return switch (choice) {
      case OURS -> "yours holds";
      case THEIRS -> "theirs holds";
      case BOTH -> "both hold";
      case BEFORE -> "as before";
    };
  }

  /** The stretches of a text whose words another has not. */
  static List<Part> differing(String text, String other) {
    List<String> words = words(text);
    List<Part> parts = new ArrayList<>();
    for (Stretch each : ListChange.between(words, words(other))) {
      int start = length(words, 0, each.from());
      int end = start + length(words, each.from(), each.to());
      if (!text.substring(start, end).isBlank()) {
        parts.add(new Part(start, end));
      }
    }
    return parts;
  }

  private static int length(List<String> words, int from, int to) {
    return words.subList(from, to).stream().mapToInt(String::length).sum();
  }

  private static List<String> words(String text) {
    Matcher matcher = WORD.matcher(text);
    List<String> words = new ArrayList<>();
    while (matcher.find()) {
      words.add(matcher.group());
    }
    return words;
  }
}
