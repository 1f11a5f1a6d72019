package limberboard.letters.recognise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What was recognised in a letter. Immutable.
 *
 * @param text the letter's subject, a blank line, and what its writer said; offsets count in it
 * @param boat the boat, where the letter says surely which
 * @param model the model, also of a boat that nobody has entered
 * @param year the year in which she was built, where that is known
 * @param urgent why the letter is urgent; empty when it is not
 * @param fault whether it tells of a fault
 * @param faultChance how likely it does, 0 to 1
 * @param symptoms what it may tell of, the likeliest first; empty when the library has nothing for
 *     it
 * @param answers for each of the symptoms the answers that the letter already gives
 */
public record Recognition(
    String text,
    Optional<Recognised> boat,
    Optional<Recognised> model,
    OptionalInt year,
    Optional<Urgent> urgent,
    boolean fault,
    double faultChance,
    List<Suspect> symptoms,
    Map<String, List<GivenAnswer>> answers) {
  /** Copies the collections. */
  public Recognition {
    symptoms = List.copyOf(symptoms);
    answers = Map.copyOf(answers);
  }

  /**
   * Words of the letter.
   *
   * @param written as they are written
   * @param start where they begin in the text
   * @param end where they end
   */
  public record Words(String written, int start, int end) {}

  /**
   * Why a letter is urgent.
   *
   * @param what what is wrong
   * @param words the words that say so
   */
  public record Urgent(String what, Words words) {
    /** What is said where a letter tells of danger and nobody can say of which. */
    public static final String UNNAMED = "somebody or the boat may be in danger";
  }

  /**
   * A symptom that a letter may tell of.
   *
   * @param id the symptom
   * @param chance how likely it tells of it, 0 to 1: an estimate
   * @param words the words that led there, in the text's order
   */
  public record Suspect(String id, double chance, List<Words> words) {
    /** Copies the list. */
    public Suspect {
      words = List.copyOf(words);
    }
  }

  /**
   * An answer that a letter already gives.
   *
   * @param check the check
   * @param answer its answer
   * @param words the words that say so
   */
  public record GivenAnswer(String check, String answer, Words words) {}
}
