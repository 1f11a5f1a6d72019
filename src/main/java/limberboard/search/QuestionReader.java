package limberboard.search;

import java.io.IOException;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes a {@link Question} of any text. Trade spellings are put right, misspelt words get the words
 * of the index that they may stand for, compounds are split and joined, words and phrases get the
 * marks of their groups, and what says little is left out or counts little. Nothing in the text is
 * syntax. Safe for use by several threads.
 */
final class QuestionReader {
  private static final int MOST_CHARACTERS = 20_000;
  private static final int MOST_TOKENS = 400;
  private static final int MOST_SLOTS = 40;

  /** Stems and marks that may stand for one word, far below what Lucene takes for one. */
  private static final int MOST_TERMS = 200;

  private static final double FAINT = 0.3;
  private static final float GROUP = 0.9f;

  private final Analysis analysis;
  private final SpellingTable spellings;
  private final Vocabulary vocabulary;
  private final Guesses guesses;
  private final FaultWords faultWords = FaultWords.english();

  QuestionReader(
      Analysis analysis, SpellingTable spellings, StopWords stopWords, Vocabulary vocabulary) {
    this.analysis = analysis;
    this.spellings = spellings;
    this.vocabulary = vocabulary;
    this.guesses = new Guesses(vocabulary, analysis.groups(), stopWords);
  }

  /** Reads a text; with {@code typing} its last word may be the beginning of one. */
  Question read(String text, boolean typing) throws IOException {
    String cut = text.length() > MOST_CHARACTERS ? text.substring(0, MOST_CHARACTERS) : text;
    List<Token> tokens = analysis.tokens(cut);
    if (tokens.size() > MOST_TOKENS) {
      tokens = tokens.subList(0, MOST_TOKENS);
    }
    boolean open =
        typing && !tokens.isEmpty() && tokens.get(tokens.size() - 1).end() == cut.length();
    Correction correction = new Correction(cut);
    List<Reading> readings = guesses.readings(spellings.correct(tokens), open, correction);
    addTerms(readings);
    boolean says =
        readings.stream().anyMatch(reading -> !reading.isStop() || reading.isPhrasePart());
    boolean fault = readings.stream().anyMatch(faultWords::tells);
    return new Question(slots(readings, says), says, fault, correction.text());
  }

  private void addTerms(List<Reading> readings) {
    for (Reading reading : readings) {
      reading
          .words()
          .forEach(
              (word, surely) -> {
                String stem = Analysis.stem(word);
                reading.stem(stem, surely);
                for (WordGroups.Match match : analysis.groups().at(List.of(stem), 0)) {
                  reading.stem(match.mark(), surely * GROUP);
                }
              });
    }
    List<String> stems = Reading.stems(readings);
    for (int i = 0; i < readings.size(); i++) {
      for (WordGroups.Match match : analysis.groups().at(stems, i)) {
        if (match.length() > 1) {
          readings
              .subList(i, i + match.length())
              .forEach(reading -> reading.phrase(match.mark(), 1));
        }
      }
    }
  }

  private List<Slot> slots(List<Reading> readings, boolean says) throws IOException {
    Map<Set<String>, Slot> slots = new LinkedHashMap<>();
    for (Reading reading : readings) {
      if (!says || !reading.isStop()) {
        add(slots, reading.terms(), reading.isFaint(), faultWords.tells(reading));
      }
    }
    addPhrasesOfStopWords(slots, readings);
    return slots.values().stream()
        .sorted(Comparator.comparing(Slot::weight).reversed())
        .limit(MOST_SLOTS)
        .toList();
  }

  /** Phrases such as "will not" of which every single word says nothing. */
  private void addPhrasesOfStopWords(Map<Set<String>, Slot> slots, List<Reading> readings)
      throws IOException {
    Set<String> looked = new HashSet<>();
    slots.values().forEach(slot -> looked.addAll(slot.terms().keySet()));
    for (Reading reading : readings) {
      for (String term : reading.terms().keySet()) {
        if (reading.isStop()
            && reading.isPhrasePart()
            && term.startsWith("=")
            && looked.add(term)) {
          add(slots, Map.of(term, 1f), false, false);
        }
      }
    }
  }

  private void add(
      Map<Set<String>, Slot> slots, Map<String, Float> terms, boolean faint, boolean fault)
      throws IOException {
    Map<String, Float> present = new LinkedHashMap<>();
    int pages = 0;
    for (Map.Entry<String, Float> term : surest(terms)) {
      int with = vocabulary.pagesWithStem(term.getKey());
      if (with > 0) {
        present.put(term.getKey(), term.getValue());
        pages = Math.max(pages, with);
      }
    }
    if (!present.isEmpty()) {
      double surest = present.values().stream().mapToDouble(Float::doubleValue).max().orElse(0);
      double weight = rarity(pages) * surest * (faint ? FAINT : 1);
      slots.putIfAbsent(present.keySet(), new Slot(present, weight, faint, fault));
    }
  }

  private static List<Map.Entry<String, Float>> surest(Map<String, Float> terms) {
    if (terms.size() <= MOST_TERMS) {
      return List.copyOf(terms.entrySet());
    }
    return terms.entrySet().stream()
        .sorted(Map.Entry.<String, Float>comparingByValue().reversed())
        .limit(MOST_TERMS)
        .toList();
  }

  /** The inverse document frequency of BM25, bounded so that one rare word cannot decide alone. */
  private double rarity(int pagesWith) {
    double pages = vocabulary.pages();
    double least = Math.max(pagesWith, pages / 50);
    return Math.log(1 + (pages - least + 0.5) / (least + 0.5));
  }
}
