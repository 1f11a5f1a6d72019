package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.letters.recognise.WordRegression.Example;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * What pages, lists and recorded letters say of each topic, text by text, as examples to learn
 * from. Safe for use by several threads.
 */
final class TopicExamples {
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}'’]+");
  private static final Set<String> WELL =
      Set.of("dri", "fine", "well", "good", "noth", "none", "nowher", "norm", "usual", "sound");
  private static final int RUN = 2;
  private static final double OF_PAGE = 0.5;
  private static final double OF_CHECK = 0.25;
  private static final double OF_LIST = 0.5;

  private final TextParser parser;
  private final List<Page<Symptom>> symptoms;
  private final List<Example> ofPages = new ArrayList<>();
  private final Map<RecordedLetter, Example> ofLetters = new ConcurrentHashMap<>();

  TopicExamples(TextParser parser, List<Page<Symptom>> symptoms) {
    this.parser = parser;
    this.symptoms = symptoms;
    for (int i = 0; i < symptoms.size(); i++) {
      Page<Symptom> page = symptoms.get(i);
      add(page.title(), i, OF_PAGE);
      add(page.head().summary(), i, OF_PAGE);
      for (String said : page.head().saidAs()) {
        add(said, i, OF_PAGE);
      }
      for (Cause cause : page.details().causes()) {
        add(cause.title(), i, OF_PAGE);
        add(cause.about(), i, OF_PAGE);
      }
      for (Check check : page.details().checks()) {
        add(check.ask(), i, OF_CHECK);
        for (List<String> all : check.saidAs().values()) {
          for (String said : all) {
            add(said, i, OF_CHECK);
          }
        }
      }
    }
    ofList("things.txt", "unknown-faults.txt", symptoms.size());
    ofList("no-faults.txt", "other-letters.txt", symptoms.size() + 1);
  }

  private void ofList(String words, String sentences, int topic) {
    WordList.groups(words).forEach(all -> all.forEach(each -> add(each, topic, OF_LIST)));
    WordList.lines(sentences).forEach(line -> add(line, topic, OF_LIST));
  }

  private void add(String text, int topic, double weight) {
    List<SaidWord> words = parser.example(text).words();
    if (!words.isEmpty()) {
      ofPages.add(new Example(keys(words), Set.of(topic), weight));
    }
  }

  /** The number of topics: the symptoms, unknown faults, and what is no fault. */
  int topics() {
    return symptoms.size() + 2;
  }

  /** The symptoms among ranked topics; none where the first is no symptom. */
  List<String> symptomsOf(List<Integer> ranked) {
    return ranked.get(0) >= symptoms.size()
        ? List.of()
        : ranked.stream()
            .filter(topic -> topic < symptoms.size())
            .map(topic -> symptoms.get(topic).id())
            .toList();
  }

  /** What pages and lists say. */
  List<Example> ofPages() {
    return ofPages;
  }

  /** A recorded letter, with the topics that it is about. */
  Example of(RecordedLetter letter) {
    return ofLetters.computeIfAbsent(
        letter, each -> new Example(keys(parser.recorded(each).words()), topics(each), 1));
  }

  private Set<Integer> topics(RecordedLetter letter) {
    Set<Integer> topics = new HashSet<>();
    for (int i = 0; i < symptoms.size(); i++) {
      if (letter.expected().symptoms().contains(symptoms.get(i).id())) {
        topics.add(i);
      }
    }
    if (topics.isEmpty()) {
      topics.add(symptoms.size() + (letter.expected().fault() ? 0 : 1));
    }
    return topics;
  }

  /**
   * What words have that may speak for a topic: stems, marks of groups, and two words that follow
   * each other; apart from these what is denied or over.
   */
  static Set<String> keys(List<SaidWord> words) {
    Set<String> keys = new HashSet<>();
    SaidWord before = null;
    for (SaidWord word : words) {
      String how = word.negated() || word.over() ? "~" : "";
      word.word().marks().forEach(mark -> keys.add(how + mark));
      if (!word.word().stop()) {
        keys.add(how + word.word().stem());
        if (before != null && before.sentence() == word.sentence()) {
          keys.add(how + before.word().stem() + " " + word.word().stem());
        }
        before = word;
      }
    }
    return keys;
  }

  /**
   * The same, and which words stand in a sentence that says that something is not so or is well.
   */
  static Set<String> toned(List<SaidWord> words) {
    Set<String> keys = new HashSet<>(keys(words));
    Set<Integer> well = new HashSet<>();
    for (SaidWord word : words) {
      if (isWell(word)) {
        well.add(word.sentence());
      }
    }
    for (SaidWord word : words) {
      if (!word.word().stop() && well.contains(word.sentence())) {
        word.word().marks().forEach(mark -> keys.add("-" + mark));
        keys.add("-" + word.word().stem());
      }
    }
    return keys;
  }

  /** Whether a word says that something is not so, or that it is well. */
  static boolean isWell(SaidWord word) {
    return word.denied() || WELL.contains(word.word().stem());
  }

  /** What the words of a recorded letter may be learnt by, with what is said to be well. */
  Set<String> toned(RecordedLetter letter) {
    return toned(parser.recorded(letter).words());
  }

  /**
   * The words of a text as they are written, small ones too, one by one and up to {@value #RUN}
   * that follow each other.
   */
  static Set<String> written(String text) {
    List<String> words =
        WORD.matcher(text.toLowerCase(Locale.ROOT)).results().map(MatchResult::group).toList();
    Set<String> keys = new HashSet<>();
    for (int from = 0; from < words.size(); from++) {
      for (int to = from + 1; to <= Math.min(words.size(), from + RUN); to++) {
        keys.add(String.join(" ", words.subList(from, to)));
      }
    }
    return keys;
  }

  /** A recorded letter's subject and what its writer says, as it is written. */
  String text(RecordedLetter letter) {
    return parser.recorded(letter).text();
  }
}
