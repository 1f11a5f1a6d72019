package limberboard.writing.start;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Ids from what people write. */
public final class IdWords {
  private static final int LONGEST = 60;
  private static final int UNIQUE_WORDS = 4;
  private static final Set<String> SMALL =
      Set.of("the", "a", "an", "its", "is", "are", "has", "have", "does", "do", "and", "of", "to");
  private static final Map<String, String> LETTERS =
      Map.of("ß", "ss", "æ", "ae", "ø", "o", "œ", "oe", "ð", "d", "þ", "th", "ł", "l");

  private IdWords() {}

  /** The id of a title: its words in lower case with hyphens; empty when no letter is left. */
  public static String of(String text) {
    String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    for (Map.Entry<String, String> letter : LETTERS.entrySet()) {
      plain = plain.replace(letter.getKey(), letter.getValue());
    }
    String id =
        plain.replaceAll("\\p{M}|['’]", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    if (id.length() <= LONGEST) {
      return id;
    }
    int end = id.lastIndexOf('-', LONGEST);
    return id.substring(0, end > 0 ? end : LONGEST);
  }

  /**
   * A short id of a text that is none of those taken.
   *
   * @param text a title or question
   * @param otherwise the id of a text without words
   * @param taken ids that it may not have
   */
  public static String unique(String text, String otherwise, Set<String> taken) {
    String brief = brief(text, UNIQUE_WORDS);
    String id = brief.isEmpty() ? otherwise : brief;
    String unique = id;
    for (int i = 2; taken.contains(unique); i++) {
      unique = id + "-" + i;
    }
    return unique;
  }

  /** The words of a text that tell it from others. */
  static Set<String> words(String text) {
    return Stream.of(of(text).split("-"))
        .filter(word -> !word.isEmpty() && !SMALL.contains(word))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** A short id of a text: its first words that tell it from others. */
  static String brief(String text, int words) {
    return words(text).stream().limit(words).collect(Collectors.joining("-"));
  }
}
