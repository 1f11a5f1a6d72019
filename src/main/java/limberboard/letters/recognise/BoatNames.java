package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.Boat;
import limberboard.library.problem.Nearest;

/**
 * The names of a workspace's boats in what letters say, also misspelt or written in two words, and
 * which of them are named in passing. Immutable.
 */
final class BoatNames {
  private static final int BEFORE = 6;
  private static final int BEFORE_OF_ONE_WORD = 3;
  private static final int BEHIND = 4;
  private static final int OUTWEIGHS = 2;
  private static final int LEAST_MISSPELT = 6;
  private static final int TOO_MANY = 3;
  private static final double SUBJECT = 2;
  private static final double SIGNED = 2;

  private final TextParser parser;
  private final Map<String, List<Boat>> byName = new HashMap<>();

  BoatNames(List<Boat> boats, TextParser parser) {
    this.parser = parser;
    for (Boat boat : boats) {
      byName.computeIfAbsent(plain(boat.name()), key -> new ArrayList<>()).add(boat);
    }
  }

  /** All names, in small letters. */
  Set<String> all() {
    return byName.keySet();
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The boats that a letter names, with how much each naming counts. */
  record Mentions(Map<Boat, Double> told, Set<Boat> passing, Map<Boat, String> as) {
    boolean isEmpty() {
      return told.isEmpty() && passing.isEmpty();
    }

    Optional<Boat> best() {
      List<Map.Entry<Boat, Double>> left =
          told.entrySet().stream()
              .filter(each -> each.getValue() > 0)
              .sorted(Map.Entry.<Boat, Double>comparingByValue().reversed())
              .toList();
      boolean list =
          left.size() >= TOO_MANY && left.get(0).getValue() < OUTWEIGHS * left.get(1).getValue();
      boolean even = left.size() > 1 && left.get(0).getValue().equals(left.get(1).getValue());
      return left.isEmpty() || list || even ? Optional.empty() : Optional.of(left.get(0).getKey());
    }

    String why(Boat boat) {
      String written = as.get(boat);
      return plain(written).equals(plain(boat.name()))
          ? "her name, " + boat.name()
          : "her name, written “" + written + "”";
    }
  }

  /**
   * The boats that a letter names.
   *
   * @param signed what its signature says
   */
  Mentions in(LetterText text, LetterText signed) {
    Mentions mentions = new Mentions(new LinkedHashMap<>(), new HashSet<>(), new HashMap<>());
    List<PhraseFinder.Match> cues = parser.cues(text);
    Set<Boat> corrected = new HashSet<>();
    for (int i = 0; i < text.words().size(); i++) {
      for (Boat boat : named(text, i)) {
        mentions.as().putIfAbsent(boat, text.written(i, i + 1));
        if (text.words().get(i).denied() && i >= text.subjectWords() && justNot(text, i)) {
          corrected.add(boat);
        }
        boolean aside = inPassing(text, cues, i);
        if (aside) {
          mentions.passing().add(boat);
        } else {
          mentions.told().merge(boat, i < text.subjectWords() ? SUBJECT : 1, Double::sum);
        }
      }
    }
    for (int i = 0; i < signed.words().size(); i++) {
      for (Boat boat : named(signed, i)) {
        mentions.as().putIfAbsent(boat, signed.written(i, i + 1));
        mentions.told().merge(boat, SIGNED, Double::sum);
      }
    }
    corrected.forEach(
        boat -> {
          if (mentions.told().getOrDefault(boat, 0.0) <= SUBJECT) {
            mentions.told().remove(boat);
          }
          mentions.passing().add(boat);
        });
    return mentions;
  }

  private static boolean justNot(LetterText text, int at) {
    return at > 0 && text.words().get(at - 1).word().word().equals("not");
  }

  private List<Boat> named(LetterText text, int at) {
    String word = text.words().get(at).word().word();
    List<Boat> exact = byName.get(word);
    if (exact != null) {
      return exact;
    }
    String single = word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
    if (byName.containsKey(single)) {
      return byName.get(single);
    }
    if (word.length() < LEAST_MISSPELT) {
      return List.of();
    }
    return byName.keySet().stream()
        .filter(name -> name.length() >= LEAST_MISSPELT && isLike(word, name))
        .findFirst()
        .map(byName::get)
        .orElse(List.of());
  }

  private static boolean isLike(String word, String name) {
    int most = name.length() >= 9 ? 2 : 1;
    return word.charAt(0) == name.charAt(0)
        && Math.abs(word.length() - name.length()) <= most
        && Nearest.distance(word, name) <= most;
  }

  private static boolean inPassing(LetterText text, List<PhraseFinder.Match> cues, int at) {
    int sentence = text.words().get(at).sentence();
    int ownAt = -1;
    int passingAt = -1;
    for (PhraseFinder.Match cue : cues) {
      boolean same = text.words().get(cue.from()).sentence() == sentence;
      if (!same || text.words().get(cue.from()).clause() + 1 < text.words().get(at).clause()) {
        continue;
      }
      int far = cue.length() == 1 && cue.label().equals("in passing") ? BEFORE_OF_ONE_WORD : BEFORE;
      boolean before = cue.to() <= at && at - cue.to() < far;
      boolean behind = cue.from() > at && cue.from() - at <= BEHIND;
      if (before && cue.label().equals("in passing")) {
        passingAt = Math.max(passingAt, cue.to());
      } else if (before && cue.label().equals("one's own")) {
        ownAt = Math.max(ownAt, cue.to());
      } else if (behind && cue.label().equals("stands after one in passing")) {
        return true;
      }
    }
    return passingAt > ownAt;
  }
}
