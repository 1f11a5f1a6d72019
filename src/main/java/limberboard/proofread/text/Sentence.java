package limberboard.proofread.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import limberboard.words.Stem;

/**
 * A sentence of a page, in words and in what is left of them without their endings. Immutable.
 *
 * @param text as it is written
 * @param words in lower case, in order
 * @param stems of the words, one each
 */
public record Sentence(String text, List<String> words, List<String> stems) {
  private static final Pattern END = Pattern.compile("(?<=[.!?])\\s+(?=[\\p{Lu}\"“(])|\\s*;\\s+");
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}'’]+");
  private static final Set<String> DENYING =
      Set.of(
          "no", "not", "never", "without", "nor", "none", "nothing", "neither", "instead", "rather",
          "than", "cannot", "can't", "don't", "doesn't", "avoid", "unlike");

  private static final Set<String> LATER = Set.of("before", "until", "unless", "till");

  /** Copies the lists. */
  public Sentence {
    words = List.copyOf(words);
    stems = List.copyOf(stems);
  }

  /** The sentences of a text. */
  public static List<Sentence> of(String text) {
    List<Sentence> sentences = new ArrayList<>();
    for (String part : END.split(text)) {
      if (!part.isBlank()) {
        sentences.add(one(part.strip()));
      }
    }
    return sentences;
  }

  /** A text taken as one sentence. */
  public static Sentence one(String text) {
    List<String> words = new ArrayList<>();
    List<String> stems = new ArrayList<>();
    for (String word : NO_WORD.split(text.toLowerCase(Locale.ROOT))) {
      String plain = word.replaceAll("^['’]+|['’](s$)?", "");
      if (!plain.isEmpty()) {
        words.add(plain);
        stems.add(Stem.of(plain));
      }
    }
    return new Sentence(text, words, stems);
  }

  /** Whether a phrase stands in it. */
  public boolean has(Phrase phrase) {
    return phrase.in(this) >= 0;
  }

  /** Whether the sentence denies anything. */
  public boolean denies() {
    return words.stream().anyMatch(DENYING::contains);
  }

  /**
   * Whether one of the words before a place denies what stands there.
   *
   * @param at the place, a number of words from the beginning
   * @param reach how many words before it are looked at
   */
  public boolean deniedBefore(int at, int reach) {
    return words.subList(Math.max(0, at - reach), at).stream().anyMatch(DENYING::contains);
  }

  /** Whether one of the words before a place says that what stands there comes later. */
  public boolean laterBefore(int at, int reach) {
    return words.subList(Math.max(0, at - reach), at).stream().anyMatch(LATER::contains);
  }
}
