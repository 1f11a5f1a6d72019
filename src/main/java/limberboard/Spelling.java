package limberboard;

import java.util.List;
import java.util.Optional;

/**
 * Whether words arrived as they were typed. In a locale that knows plain ASCII only, Java loses
 * every other letter of the command line and of file names, before the program has begun.
 */
final class Spelling {
  private static final char LOST = '\ufffd';
  private final String folder;

  /** For this process. */
  Spelling() {
    this(System.getProperty("user.dir", ""));
  }

  /**
   * For a process.
   *
   * @param folder the folder it runs in
   */
  Spelling(String folder) {
    this.folder = folder;
  }

  /** What is wrong and what to do; empty when every word has arrived. */
  Optional<String> wrong(String... words) {
    for (String word : List.of(words)) {
      if (lost(word)) {
        return Optional.of(told("\"" + word + "\""));
      }
    }
    return lost(folder) ? Optional.of(told("the folder's name")) : Optional.empty();
  }

  private static boolean lost(String word) {
    return word.indexOf(LOST) >= 0;
  }

  private static String told(String what) {
    return "letters of "
        + what
        + " were lost on the way, because they are not in the encoding this terminal is set to;"
        + " nothing was done. Set LC_ALL=C.UTF-8 and try again";
  }
}
