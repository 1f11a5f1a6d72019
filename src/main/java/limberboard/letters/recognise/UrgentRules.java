package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.search.TextWords;

/**
 * Says whether a letter is urgent, by rules that a person can read and edit: words of a few groups
 * that meet in a sentence or in three that stand together, told as something that is so now.
 */
final class UrgentRules {
  private final PhraseFinder groups = new PhraseFinder();
  private final List<Rule> rules = new ArrayList<>();

  /**
   * Why a letter is urgent.
   *
   * @param what what is wrong
   * @param from the first of the words that say so
   * @param to the word behind the last of them
   */
  record Alarm(String what, int from, int to) {}

  private record Rule(String what, boolean near, Set<String> met, Set<String> not) {}

  UrgentRules(TextWords reader) {
    for (String line : WordList.lines("urgent.txt")) {
      int at = line.startsWith("@") ? line.indexOf(':') : ruleAt(line);
      String name = line.substring(0, at).strip();
      String rest = line.substring(at + 1);
      if (line.startsWith("@")) {
        WordList.phrases(rest).forEach(phrase -> groups.add(reader, phrase, name));
      } else {
        rules.add(new Rule(name, line.charAt(at) == '~', named(rest, "@"), named(rest, "-@")));
      }
    }
  }

  private static int ruleAt(String line) {
    int colon = line.indexOf(':');
    int near = line.indexOf('~');
    return near < 0 || colon >= 0 && colon < near ? colon : near;
  }

  private static Set<String> named(String rest, String sign) {
    Set<String> named = new HashSet<>();
    Arrays.stream(rest.strip().split("\\s+"))
        .filter(word -> word.startsWith(sign))
        .forEach(word -> named.add(word.substring(sign.length() - 1)));
    return named;
  }

  /** The first reason for urgency; empty where there is none. */
  Optional<Alarm> in(LetterText text) {
    List<PhraseFinder.Match> found = groups.in(text.plain());
    for (Rule rule : rules) {
      int span = rule.near() ? 3 : 1;
      for (int sentence = 0; sentence < text.sentences(); sentence++) {
        Optional<Alarm> alarm = judge(rule, text, found, sentence, sentence + span);
        if (alarm.isPresent()) {
          return alarm;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Alarm> judge(
      Rule rule, LetterText text, List<PhraseFinder.Match> found, int from, int to) {
    Set<String> met = new HashSet<>();
    int first = Integer.MAX_VALUE;
    int last = 0;
    for (PhraseFinder.Match match : found) {
      int sentence = text.words().get(match.from()).sentence();
      if (sentence < from || sentence >= to) {
        continue;
      }
      if (rule.not().contains(match.label())) {
        return Optional.empty();
      }
      if (rule.met().contains(match.label()) && isSo(text, match)) {
        met.add(match.label());
        first = Math.min(first, match.from());
        last = Math.max(last, match.to());
      }
    }
    return met.size() == rule.met().size()
        ? Optional.of(new Alarm(rule.what(), first, last))
        : Optional.empty();
  }

  private static boolean isSo(LetterText text, PhraseFinder.Match match) {
    SaidWord first = text.words().get(match.from());
    return first.isSo();
  }
}
