package limberboard.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One word of a question, while it is being made sense of. */
final class Reading {
  private final Token written;
  private final boolean stop;
  private final boolean faint;
  private final Map<String, Float> words = new LinkedHashMap<>();
  private final Map<String, Float> terms = new LinkedHashMap<>();
  private boolean inPhrase;

  Reading(Token written, boolean stop, boolean faint) {
    this.written = written;
    this.stop = stop;
    this.faint = faint;
  }

  Token written() {
    return written;
  }

  /** Whether it is a word that is looked for only as part of a phrase. */
  boolean isStop() {
    return stop;
  }

  boolean isFaint() {
    return faint && !inPhrase;
  }

  /** What the word may be, whole words with how surely. */
  Map<String, Float> words() {
    return words;
  }

  /** The likeliest stem, for finding phrases. */
  String likeliestStem() {
    return Analysis.stem(words.isEmpty() ? written.word() : words.keySet().iterator().next());
  }

  void mayBe(String word, float surely) {
    words.putIfAbsent(word, surely);
  }

  /** Lets a stem or mark stand for this word. */
  void stem(String stem, float surely) {
    terms.merge(stem, surely, Math::max);
  }

  /** Lets the mark of a phrase that the word belongs to stand for it. */
  void phrase(String mark, float surely) {
    inPhrase = true;
    stem(mark, surely);
  }

  boolean isPhrasePart() {
    return inPhrase;
  }

  Map<String, Float> terms() {
    return terms;
  }

  /** The words of readings, as stems. */
  static List<String> stems(List<Reading> readings) {
    List<String> stems = new ArrayList<>();
    readings.forEach(reading -> stems.add(reading.likeliestStem()));
    return stems;
  }
}
