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
import java.util.regex.Pattern;
import limberboard.letters.recognise.LetterText.SaidWord;

/**
 * What stands around each boat's name in a letter, as keys to learn from: the words before and
 * behind it and what they are (people, company, part of a boat, ...), how often and where she is
 * named beside others, and what the rules of {@link BoatNames} say. Never the name itself, so that
 * what is learnt of one yard's boats holds for another's. Immutable.
 */
final class NamingKeys {
  /** Of the boat that the rules say the letter is about. */
  private static final String RULED = "by the rules";

  /** Of a boat that the rules say is named in passing. */
  private static final String RULED_PASSING = "rule passing";

  private static final int NEAR_BEFORE = 3;
  private static final int BEFORE = 8;
  private static final int NEAR_BEHIND = 2;
  private static final int BEHIND = 7;
  private static final int MANY = 3;
  private static final int RUN = 4;
  private static final String QUOTES = "\"“„«‘";
  private static final String SHE = "[she]";
  private static final String HERS = "[hers]";
  private static final String ANOTHER = "[another]";
  private static final String LIST = "naming-words.txt";

  /** Words that say whose boat is spoken of. */
  private static final Map<String, String> OF_WORD = new HashMap<>();

  static {
    Map.of(
            "mine", List.of("my", "our", "mine", "ours"),
            "she", List.of("she", "her", "she's"),
            "they", List.of("they", "their", "them", "he", "his", "him"),
            "we", List.of("we", "i", "us", "me", "i'm", "i've", "we've"))
        .forEach((kind, words) -> words.forEach(word -> OF_WORD.put(word, kind)));
  }

  private static final Set<String> NO_OWNERS =
      Set.of("it's", "that's", "she's", "he's", "here's", "there's", "what's", "let's");
  private static final Pattern NAMELESS =
      Pattern.compile("(?i)\\b(no name|without (a )?name|unnamed|not named|name yet)\\b");
  private static final Pattern OURS = Pattern.compile("(?i)\\b(our own|we own|ours|mine)\\b");
  private static final Pattern SIZE =
      Pattern.compile(
          "(?i)\\b(?:our|my|a|the) (?:little |new |old |own )?(?:tarnwick )?"
              + "(?:\\d\\d|twenty-?(?:one|six)|thirty(?:-four)?)\\b");

  private final NameFinder finder;
  private final BoatNames rules;
  private final Map<String, Set<String>> kinds = new HashMap<>();

  /**
   * What of a letter may name its boat.
   *
   * @param text its subject and what its writer said
   * @param signed its signature
   * @param sender the name that it is sent under
   */
  record Read(LetterText text, LetterText signed, LetterText sender) {}

  /** One place where a boat is named. */
  private record Place(String part, LetterText text, int at, NameFinder.Found found) {}

  /** A word beside a name, so many clauses away. */
  private record Beside(String word, int clauses) {}

  NamingKeys(NameFinder finder, BoatNames rules) {
    this.finder = finder;
    this.rules = rules;
    WordList.sections(LIST)
        .forEach(
            (kind, words) ->
                words.forEach(
                    word -> kinds.computeIfAbsent(word, none -> new HashSet<>()).add(kind)));
  }

  /** What stands around each name in a letter; empty where no boat is named. */
  Map<String, Set<String>> of(Read letter) {
    List<Place> places = new ArrayList<>();
    places(letter.text(), "", places);
    places(letter.signed(), "signed", places);
    places(letter.sender(), "sender", places);
    if (places.isEmpty()) {
      return Map.of();
    }
    Map<String, List<Place>> byName = new LinkedHashMap<>();
    places.forEach(
        place ->
            byName.computeIfAbsent(place.found().name(), none -> new ArrayList<>()).add(place));
    BoatNames.Mentions ruled = rules.in(letter.text(), letter.signed());
    Map<String, Set<String>> keys = new LinkedHashMap<>();
    byName.forEach(
        (name, own) -> {
          Set<String> all = new HashSet<>();
          own.forEach(place -> all.addAll(around(place, places)));
          all.addAll(among(name, own, places, byName));
          all.addAll(ruled(name, ruled));
          all.addAll(ofLetter(letter.text().text()));
          all.addAll(elsewhere(letter.text(), own));
          keys.put(name, all);
        });
    return keys;
  }

  /** The words of a letter and of its sender's name, by their stems, without the boats' names. */
  Set<String> words(Read letter) {
    Set<String> keys = new HashSet<>();
    LetterText text = letter.text();
    for (int i = 0; i < text.words().size(); i++) {
      if (finder.at(text, i).isEmpty()) {
        String stem = text.words().get(i).word().stem();
        keys.add("word:" + stem);
        if (i < text.subjectWords()) {
          keys.add("subject:" + stem);
        }
      }
    }
    LetterText sender = letter.sender();
    for (int i = 0; i < sender.words().size(); i++) {
      if (finder.at(sender, i).isEmpty()) {
        keys.add("from:" + sender.words().get(i).word().stem());
      }
    }
    return keys;
  }

  private void places(LetterText text, String part, List<Place> into) {
    int next = 0;
    for (int i = 0; i < text.words().size(); i++) {
      Optional<NameFinder.Found> found = i < next ? Optional.empty() : finder.at(text, i);
      if (found.isPresent()) {
        String where = part.isEmpty() ? (i < text.subjectWords() ? "subject" : "text") : part;
        into.add(new Place(where, text, i, found.get()));
        next = i + found.get().words();
      }
    }
  }

  private static Set<String> ruled(String name, BoatNames.Mentions ruled) {
    Set<String> keys = new HashSet<>();
    if (ruled.passing().contains(name)) {
      keys.add(RULED_PASSING);
    }
    ruled.best().filter(name::equals).ifPresent(best -> keys.add(RULED));
    return keys;
  }

  private static Set<String> ofLetter(String text) {
    Set<String> keys = new HashSet<>();
    Map.of("nameless", NAMELESS, "ours", OURS, "size", SIZE)
        .forEach(
            (key, pattern) -> {
              if (pattern.matcher(text).find()) {
                keys.add(key);
              }
            });
    return keys;
  }

  /** Where in the letter she is named, and where round that the writer speaks of whom. */
  private static Set<String> elsewhere(LetterText text, List<Place> own) {
    Set<Integer> naming = new HashSet<>();
    own.stream()
        .filter(place -> place.text() == text)
        .forEach(place -> naming.add(text.words().get(place.at()).sentence()));
    Set<String> keys = new HashSet<>();
    if (naming.isEmpty()) {
      return keys;
    }
    int first = naming.stream().mapToInt(each -> each).min().orElseThrow();
    keys.add("sentence " + place(text, first));
    for (SaidWord each : text.words()) {
      String kind = OF_WORD.get(each.word().word().replace('\u2019', '\''));
      if (kind != null) {
        keys.add(kind + " " + side(naming, first, each.sentence()));
      }
    }
    return keys;
  }

  /** Where in the letter a sentence stands. */
  private static String place(LetterText text, int sentence) {
    List<SaidWord> words = text.words();
    int begin = words.get(Math.min(text.subjectWords(), words.size() - 1)).sentence();
    int last = words.get(words.size() - 1).sentence();
    if (sentence <= begin) {
      return "first";
    } else if (sentence == begin + 1) {
      return "second";
    }
    return sentence >= last - 1 ? "late" : "amid";
  }

  private static String side(Set<Integer> naming, int first, int sentence) {
    if (naming.contains(sentence)) {
      return "with";
    } else if (sentence < first) {
      return "before";
    }
    return sentence == first + 1 ? "next" : "behind";
  }

  private static Set<String> among(
      String name, List<Place> own, List<Place> all, Map<String, List<Place>> byName) {
    Set<String> keys = new HashSet<>();
    keys.add("count " + Math.min(MANY, own.size()));
    keys.add("boats " + Math.min(MANY, byName.size()));
    if (byName.size() > 1) {
      int most =
          byName.entrySet().stream()
              .filter(each -> !each.getKey().equals(name))
              .mapToInt(each -> each.getValue().size())
              .max()
              .orElse(0);
      keys.add(own.size() > most ? "most" : own.size() < most ? "fewer" : "as often");
      keys.add(all.get(0).found().name().equals(name) ? "named first" : "named later");
      if (all.get(all.size() - 1).found().name().equals(name)) {
        keys.add("named last");
      }
    }
    for (String part : List.of("signed", "sender", "subject")) {
      if (own.stream().anyMatch(place -> place.part().equals(part))) {
        keys.add("in " + part);
      } else if (all.stream().anyMatch(place -> place.part().equals(part))) {
        keys.add("another in " + part);
      }
    }
    return keys;
  }

  private Set<String> around(Place place, List<Place> all) {
    Set<String> keys = new HashSet<>();
    boolean alone = isAlone(place);
    List<Beside> before = alone ? List.of() : beside(place, -1, all);
    List<Beside> behind = alone ? List.of() : beside(place, 1, all);
    keys.addAll(runs(place.found().owns() ? HERS : SHE, before, behind));
    keys.add("part " + place.part());
    near("p", before, NEAR_BEFORE, keys);
    near("n", behind, NEAR_BEHIND, keys);
    far("b", before, BEFORE, keys);
    far("a", behind, BEHIND, keys);
    if (before.size() > 1) {
      keys.add("pp:" + before.get(1).word() + " " + before.get(0).word());
    }
    if (before.isEmpty()) {
      keys.add("begins");
    }
    if (behind.isEmpty()) {
      keys.add("ends");
    }
    if (alone) {
      keys.add(areListed(all) ? "listed" : "alone");
    }
    if (!before.isEmpty() && before.get(0).word().equals("our") && !isFormer(before)) {
      keys.add("our own");
    }
    if (place.found().owns()) {
      keys.add("owns");
    }
    keys.add(place.found().exact() ? "exact" : "misspelt");
    if (isQuoted(place)) {
      keys.add("quoted");
    }
    keys.addAll(letters(place));
    return keys;
  }

  /** Whether several boats each stand by themselves, as in the results of a race. */
  private static boolean areListed(List<Place> all) {
    return all.stream()
            .filter(NamingKeys::isAlone)
            .map(place -> place.found().name())
            .distinct()
            .count()
        > 1;
  }

  /** Whether a name is all of a sentence, or of a line, as under a letter. */
  private static boolean isAlone(Place place) {
    int behind = place.at() + place.found().words();
    return (place.at() == 0 || isBetween(place.text(), place.at() - 1))
        && (behind >= place.text().words().size() || isBetween(place.text(), behind - 1));
  }

  /** Whether a sentence or a line ends between a word and the next. */
  private static boolean isBetween(LetterText text, int at) {
    SaidWord word = text.words().get(at);
    SaidWord next = text.words().get(at + 1);
    int end = word.word().end();
    return word.sentence() != next.sentence()
        || text.text().substring(end, next.word().start()).indexOf('\n') >= 0;
  }

  private static boolean isQuoted(Place place) {
    int start = place.text().words().get(place.at()).word().start();
    return start > 0 && QUOTES.indexOf(place.text().text().charAt(start - 1)) >= 0;
  }

  private boolean isFormer(List<Beside> before) {
    return before.stream()
        .limit(NEAR_BEFORE + NEAR_BEHIND)
        .anyMatch(each -> kinds(each.word()).contains("former"));
  }

  /** Whether the name is written in small letters where sentences begin with capitals. */
  private static Set<String> letters(Place place) {
    LetterText text = place.text();
    String written = text.written(place.at(), place.at() + 1);
    if (Character.isLowerCase(written.charAt(0))) {
      long small = 0;
      for (int i = 0; i < text.words().size(); i++) {
        boolean first =
            i == 0 || text.words().get(i).sentence() != text.words().get(i - 1).sentence();
        boolean lower =
            Character.isLowerCase(text.text().charAt(text.words().get(i).word().start()));
        small += first ? lower ? 1 : -1 : 0;
      }
      return small > 0 ? Set.of("small") : Set.of("small", "small although capitals are used");
    }
    return written.equals(written.toUpperCase(Locale.ROOT)) ? Set.of("capitals") : Set.of();
  }

  /**
   * The words of the sentence as they follow each other: up to {@value #RUN} with the name among
   * them, and every two before or behind it.
   */
  private static Set<String> runs(String name, List<Beside> before, List<Beside> behind) {
    Set<String> keys = new HashSet<>();
    for (int first = 0; first < Math.min(RUN, before.size() + 1); first++) {
      for (int last = first == 0 ? 1 : 0; last < RUN - first && last <= behind.size(); last++) {
        List<String> run = new ArrayList<>();
        for (int i = first - 1; i >= 0; i--) {
          run.add(before.get(i).word());
        }
        run.add(name);
        behind.subList(0, last).forEach(each -> run.add(each.word()));
        keys.add("run:" + String.join(" ", run));
      }
    }
    for (int i = 1; i < before.size(); i++) {
      keys.add("two b:" + before.get(i).word() + " " + before.get(i - 1).word());
    }
    for (int i = 1; i < behind.size(); i++) {
      keys.add("two a:" + behind.get(i - 1).word() + " " + behind.get(i).word());
    }
    return keys;
  }

  private List<Beside> beside(Place place, int step, List<Place> all) {
    List<SaidWord> words = place.text().words();
    int at = step < 0 ? place.at() - 1 : place.at() + place.found().words();
    SaidWord own = words.get(place.at());
    List<Beside> found = new ArrayList<>();
    for (int i = at; i >= 0 && i < words.size(); i += step) {
      if (words.get(i).sentence() != own.sentence()) {
        return found;
      }
      String word = words.get(i).word().word().replace('’', '\'');
      int here = i;
      boolean another =
          all.stream().anyMatch(each -> each.text() == place.text() && each.at() == here);
      found.add(
          new Beside(
              another ? ANOTHER : Character.isDigit(word.charAt(0)) ? "#" : word,
              Math.abs(words.get(i).clause() - own.clause())));
    }
    return found;
  }

  private void near(String side, List<Beside> words, int most, Set<String> keys) {
    for (int i = 0; i < Math.min(most, words.size()); i++) {
      String word = words.get(i).word();
      keys.add(side + (i + 1) + ":" + word);
      for (String kind : kinds(word)) {
        keys.add(side + (i + 1) + "=" + kind);
      }
    }
  }

  private void far(String side, List<Beside> words, int most, Set<String> keys) {
    for (int i = 0; i < Math.min(most, words.size()); i++) {
      Beside beside = words.get(i);
      String how = beside.clauses() == 0 ? side : side + "c";
      for (String kind : kinds(beside.word())) {
        keys.add(how + "=" + kind);
      }
      if (beside.clauses() <= 1) {
        keys.add(how + ":" + beside.word());
      }
    }
  }

  private Set<String> kinds(String word) {
    Set<String> found = new HashSet<>(kinds.getOrDefault(word, Set.of()));
    if (word.endsWith("'s") && !NO_OWNERS.contains(word)) {
      found.add("somebody's");
    }
    if (word.endsWith("s")) {
      found.addAll(kinds.getOrDefault(word.substring(0, word.length() - 1), Set.of()));
    }
    return found;
  }
}
