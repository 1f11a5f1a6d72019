package limberboard.letters.recognise;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which boats that a letter names it names in passing, by rules that a person wrote: the words
 * before and behind each name. Immutable.
 */
final class BoatNames {
  private static final int BEFORE = 6;
  private static final int BEFORE_OF_ONE_WORD = 3;
  private static final int BEHIND = 4;
  private static final int OUTWEIGHS = 2;
  private static final int TOO_MANY = 3;
  private static final double SUBJECT = 2;
  private static final double SIGNED = 2;
  private static final Set<String> HELD = Set.of("in", "on", "aboard", "onboard");
  private static final Set<String> PLACED =
      Set.of(
          "beside",
          "next",
          "near",
          "between",
          "behind",
          "in",
          "ahead",
          "astern",
          "opposite",
          "alongside",
          "across");
  private static final Set<String> NO_OWNERS =
      Set.of("it's", "that's", "she's", "he's", "here's", "there's", "what's", "yard's", "boat's");
  private final TextParser parser;
  private final NameFinder finder;

  /**
   * For some names.
   *
   * @param finder finds them
   */
  BoatNames(NameFinder finder, TextParser parser) {
    this.finder = finder;
    this.parser = parser;
  }

  /** The boats that a letter names, with how much each naming counts. */
  record Mentions(Map<String, Double> told, Set<String> passing) {
    Optional<String> best() {
      List<Map.Entry<String, Double>> left =
          told.entrySet().stream()
              .filter(each -> each.getValue() > 0)
              .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
              .toList();
      boolean list =
          left.size() >= TOO_MANY && left.get(0).getValue() < OUTWEIGHS * left.get(1).getValue();
      boolean even = left.size() > 1 && left.get(0).getValue().equals(left.get(1).getValue());
      return left.isEmpty() || list || even ? Optional.empty() : Optional.of(left.get(0).getKey());
    }
  }

  /**
   * The boats that a letter names.
   *
   * @param signed what its signature says
   */
  Mentions in(LetterText text, LetterText signed) {
    Mentions mentions = new Mentions(new LinkedHashMap<>(), new HashSet<>());
    List<PhraseFinder.Match> cues = parser.cues(text);
    Set<String> corrected = new HashSet<>();
    Set<String> anothers = new HashSet<>();
    for (int i = 0; i < text.words().size(); i++) {
      Optional<String> named = named(text, i);
      if (named.isPresent()) {
        String boat = named.get();
        boolean first = !mentions.told().containsKey(boat);
        if (i >= text.subjectWords() && justNot(text, i)) {
          corrected.add(boat);
        }
        boolean aside =
            inPassing(text, cues, i) || anothers.contains(boat) && !isOwn(text, cues, i);
        if (aside && first && i >= text.subjectWords()) {
          anothers.add(boat);
        }
        if (aside) {
          mentions.passing().add(boat);
        } else {
          mentions.told().merge(boat, i < text.subjectWords() ? SUBJECT : 1, Double::sum);
        }
      }
    }
    for (int i = 0; i < signed.words().size(); i++) {
      named(signed, i).ifPresent(boat -> mentions.told().merge(boat, SIGNED, Double::sum));
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

  private static boolean isOwn(LetterText text, List<PhraseFinder.Match> cues, int at) {
    return cues.stream()
        .filter(cue -> cue.label().equals("one's own"))
        .anyMatch(
            cue ->
                cue.to() <= at
                    && at - cue.to() < BEFORE_OF_ONE_WORD
                    && sameSentence(text, cue, at));
  }

  private static boolean sameSentence(LetterText text, PhraseFinder.Match cue, int at) {
    return text.words().get(cue.from()).sentence() == text.words().get(at).sentence();
  }

  private static boolean justNot(LetterText text, int at) {
    return at > 0 && text.words().get(at - 1).word().word().equals("not");
  }

  private Optional<String> named(LetterText text, int at) {
    return finder.at(text, at).map(NameFinder.Found::name);
  }

  /** Whether a cue says that somebody had a boat: for a week, or before this one. */
  private static boolean isHad(LetterText text, PhraseFinder.Match cue) {
    return text.words().get(cue.to() - 1).word().word().equals("had");
  }

  private static boolean isSaid(
      LetterText text, List<PhraseFinder.Match> cues, int at, String label) {
    return cues.stream().anyMatch(cue -> cue.label().equals(label) && sameSentence(text, cue, at));
  }

  private static boolean isLongAgo(LetterText text, List<PhraseFinder.Match> cues, int at) {
    return isSaid(text, cues, at, "in the past")
        || text.ofSentence(text.words().get(at).sentence()).stream()
            .anyMatch(word -> word.word().word().equals("once"));
  }

  private static String cueWord(LetterText text, PhraseFinder.Match cue) {
    return text.words().get(cue.from()).word().word();
  }

  /** Whether a boat is named as that of somebody: "at my colleague's Whimbrel". */
  private static boolean isOfSomebody(LetterText text, int at) {
    if (at == 0 || text.words().get(at - 1).sentence() != text.words().get(at).sentence()) {
      return false;
    }
    String before = text.words().get(at - 1).word().word();
    return (before.endsWith("'s") || before.endsWith("’s"))
        && !NO_OWNERS.contains(before.replace('’', '\''));
  }

  private boolean isBetween(LetterText text, int at, PhraseFinder.Match cue) {
    return IntStream.range(at + 1, cue.from()).anyMatch(i -> named(text, i).isPresent());
  }

  private boolean inPassing(LetterText text, List<PhraseFinder.Match> cues, int at) {
    if (isOfSomebody(text, at)) {
      return true;
    }
    boolean held = at > 0 && HELD.contains(text.words().get(at - 1).word().word());
    int sentence = text.words().get(at).sentence();
    int ownAt = -1;
    int passingAt = -1;
    for (PhraseFinder.Match cue : cues) {
      boolean same = text.words().get(cue.from()).sentence() == sentence;
      if (!same || text.words().get(cue.from()).clause() + 1 < text.words().get(at).clause()) {
        continue;
      }
      int far = cue.length() == 1 && cue.label().equals("in passing") ? BEFORE_OF_ONE_WORD : BEFORE;
      boolean apart = held && cue.to() < at - 1 && PLACED.contains(cueWord(text, cue));
      boolean lately = isHad(text, cue) && isSaid(text, cues, at, "lately");
      boolean before = cue.to() <= at && at - cue.to() < far && !apart && !lately;
      boolean behind = cue.from() > at && cue.from() - at <= BEHIND && !isBetween(text, at, cue);
      boolean around = before || cue.from() > at && cue.from() - at <= BEFORE;
      if (around && cue.label().equals("in passing long ago") && isLongAgo(text, cues, at)) {
        return true;
      }
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
