package limberboard.writing.start;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;

/**
 * Reads what an answer says of the causes: {@code seal usually, deck fitting very often, others
 * never}. A cause is named by words of its title; without a likelihood it is {@value #UNSAID}.
 */
final class FindsReader {
  /** What stands for a likelihood that nobody has said. */
  static final String UNSAID = "usually";

  private static final Pattern PER_CENT = Pattern.compile("([0-9]{1,3})\\s*%");
  private static final Pattern SHARE = Pattern.compile("[01](?:\\.[0-9]+)?");
  private static final Set<String> OTHERS = Set.of("others", "other", "rest", "all others");
  private static final int SHORTEST_STEM = 4;
  private static final double HUNDRED = 100;

  /** Is told what is not understood. */
  interface Wrong {
    /** Takes a line, what is wrong there and what would be right. */
    void at(int line, String wrong, String right);
  }

  private final List<OutlinedCause> causes;
  private final Wrong wrong;

  FindsReader(List<OutlinedCause> causes, Wrong wrong) {
    this.causes = causes;
    this.wrong = wrong;
  }

  /** Cause id to likelihood, in order. */
  Map<String, String> read(String text, int line) {
    Map<String, String> row = new LinkedHashMap<>();
    for (String part : text.split("[,;]")) {
      List<String> words = Arrays.asList(part.strip().split("\\s+"));
      if (words.get(0).isEmpty()) {
        continue;
      }
      int taken = 0;
      String likelihood = UNSAID;
      for (int count = Math.min(2, words.size() - 1); count > 0; count--) {
        Optional<String> read =
            likelihood(String.join(" ", words.subList(words.size() - count, words.size())));
        if (read.isPresent()) {
          likelihood = read.get();
          taken = count;
          break;
        }
      }
      String name = String.join(" ", words.subList(0, words.size() - taken));
      String said = likelihood;
      cause(name, line).ifPresent(cause -> row.put(cause, said));
    }
    return row;
  }

  private static Optional<String> likelihood(String text) {
    String word = text.toLowerCase(Locale.ROOT).replace(' ', '-');
    Matcher share = PER_CENT.matcher(text);
    if (share.matches() && Integer.parseInt(share.group(1)) <= HUNDRED) {
      return Optional.of(Double.toString(Integer.parseInt(share.group(1)) / HUNDRED));
    }
    boolean number = SHARE.matcher(text).matches() && Double.parseDouble(text) <= 1;
    return Likelihood.scale().containsKey(word) || number ? Optional.of(word) : Optional.empty();
  }

  private Optional<String> cause(String name, int line) {
    if (OTHERS.contains(name.toLowerCase(Locale.ROOT).replaceFirst("^the ", ""))) {
      return Optional.of(Check.OTHERS);
    }
    Set<String> asked = IdWords.words(name);
    List<OutlinedCause> fitting =
        causes.stream()
            .filter(cause -> cause.id().equals(IdWords.of(name)))
            .findFirst()
            .map(List::of)
            .orElseGet(() -> causes.stream().filter(cause -> names(asked, cause)).toList());
    if (fitting.size() == 1) {
      return Optional.of(fitting.get(0).id());
    }
    wrong.at(
        line,
        fitting.isEmpty()
            ? "\"" + name + "\" is no cause of this outline"
            : "\""
                + name
                + "\" may be "
                + String.join(" or ", fitting.stream().map(OutlinedCause::title).toList()),
        "name one by words of its line");
    return Optional.empty();
  }

  private static boolean names(Set<String> asked, OutlinedCause cause) {
    Set<String> words = IdWords.words(cause.title());
    return !asked.isEmpty()
        && asked.stream().allMatch(word -> words.stream().anyMatch(each -> isLike(word, each)));
  }

  private static boolean isLike(String one, String other) {
    int shorter = Math.min(one.length(), other.length());
    return one.equals(other)
        || shorter >= SHORTEST_STEM && (one.startsWith(other) || other.startsWith(one));
  }
}
