package limberboard.words;

import java.util.List;

/** Numbers of things in words. Stateless. */
public final class CountWords {
  private static final List<String> WORDS =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private CountWords() {}

  /** So many of something whose plural ends in s: {@code 1 check}, {@code 3 checks}. */
  public static String of(long number, String one) {
    return of(number, one, one + "s");
  }

  /** So many of something: {@code 1 piece of work}, {@code 3 pieces of work}. */
  public static String of(long number, String one, String several) {
    return number + " " + (number == 1 ? one : several);
  }

  /** A number in words up to ten, in digits beyond. */
  public static String word(long number) {
    return number >= 0 && number < WORDS.size() ? WORDS.get((int) number) : Long.toString(number);
  }

  /** {@code twice}, {@code three times}; of 2 or more. */
  public static String times(long number) {
    return number == 2 ? "twice" : word(number) + " times";
  }
}
