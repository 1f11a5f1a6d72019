package limberboard.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Makes out what each word of a question may be: itself, a word being typed, a misspelt word of the
 * index, or half or twice a compound.
 */
final class Guesses {
  /** What looking up one misspelt word costs sets how many of them a question may have. */
  private static final int MOST_MISSPELT = 24;

  private static final int MOST_SIMILAR = 4;
  private static final int MOST_ENDINGS = 30;
  private static final int SHORTEST_PART = 3;
  private static final int SHORTEST_COMPOUND = 6;
  private static final int LONGEST_FIRST_PART = 4;
  private static final int SHORTEST_MISSPELT_COMPOUND = 7;
  private static final int MOST_MISSPELT_COMPOUNDS = 12;
  private static final float ENDING = 0.8f;
  private static final float ONE_EDIT = 0.85f;
  private static final float TWO_EDITS = 0.65f;
  private static final float SOUNDS_OTHER = 0.7f;

  private final Vocabulary vocabulary;
  private final WordGroups groups;
  private final StopWords stopWords;

  Guesses(Vocabulary vocabulary, WordGroups groups, StopWords stopWords) {
    this.vocabulary = vocabulary;
    this.groups = groups;
    this.stopWords = stopWords;
  }

  /**
   * The readings of a text's words, in order.
   *
   * @param stretches the text after trade spellings were put right
   * @param open whether the last word may still be being typed
   * @param correction is told what was misspelt
   */
  List<Reading> readings(List<SpellingTable.Stretch> stretches, boolean open, Correction correction)
      throws IOException {
    List<Reading> readings = new ArrayList<>();
    int misspelt = 0;
    for (int i = 0; i < stretches.size(); i++) {
      SpellingTable.Stretch stretch = stretches.get(i);
      Token first = stretch.written().get(0);
      if (stretch.corrected()) {
        readings.addAll(corrected(stretch, correction));
      } else if (open && i == stretches.size() - 1) {
        readings.add(typing(first));
      } else if (isKnown(first.word())) {
        readings.add(plain(first));
      } else if (misspelt < MOST_MISSPELT) {
        misspelt++;
        readings.addAll(unknown(first, correction));
      }
    }
    join(readings, correction);
    return readings;
  }

  /** What is meant; a single word also as it was written, which some page may have. */
  private List<Reading> corrected(SpellingTable.Stretch stretch, Correction correction) {
    Token first = stretch.meant().get(0);
    correction.replace(first.start(), first.end(), spoken(stretch.meant()));
    List<Reading> readings = stretch.meant().stream().map(this::plain).toList();
    if (stretch.written().size() == 1) {
      readings.forEach(reading -> reading.mayBe(stretch.written().get(0).word(), 1));
    }
    return readings;
  }

  private static String spoken(List<Token> tokens) {
    return tokens.stream().map(Token::word).collect(Collectors.joining(" "));
  }

  private boolean isKnown(String word) throws IOException {
    if (stopWords.isStop(word) || vocabulary.pagesWith(word) > 0) {
      return true;
    }
    String stem = Analysis.stem(word);
    return groups.knows(stem) || vocabulary.pagesWithStem(stem) > 0;
  }

  private Reading plain(Token token) {
    Reading reading =
        new Reading(token, stopWords.isStop(token.word()), stopWords.isFaint(token.word()));
    reading.mayBe(token.word(), 1);
    return reading;
  }

  private Reading typing(Token token) throws IOException {
    List<String> endings = vocabulary.startingWith(token.word(), MOST_ENDINGS);
    boolean known = isKnown(token.word());
    boolean stop = stopWords.isStop(token.word()) && endings.isEmpty();
    Reading reading = new Reading(token, stop, endings.isEmpty());
    if (known && !stopWords.isStop(token.word())) {
      reading.mayBe(token.word(), 1);
    }
    endings.stream()
        .filter(ending -> !stopWords.isStop(ending))
        .forEach(ending -> reading.mayBe(ending, ENDING));
    return reading;
  }

  private List<Reading> unknown(Token token, Correction correction) throws IOException {
    List<Vocabulary.Similar> similar = vocabulary.similar(token.word(), MOST_SIMILAR);
    if (similar.isEmpty() || similar.get(0).edits() > 1) {
      List<Token> parts = split(token);
      if (!parts.isEmpty()) {
        correction.replace(token.start(), token.end(), spoken(parts));
        return parts.stream().map(this::plain).toList();
      }
    }
    if (similar.isEmpty()) {
      return List.of(plain(token));
    }
    String best = similar.get(0).word();
    Reading reading = new Reading(token, stopWords.isStop(best), stopWords.isFaint(best));
    String sound = SoundKey.of(token.word());
    for (Vocabulary.Similar found : similar) {
      float surely = found.edits() > 1 ? TWO_EDITS : ONE_EDIT;
      boolean soundsAlike = SoundKey.of(found.word()).equals(sound);
      reading.mayBe(found.word(), soundsAlike ? surely : surely * SOUNDS_OTHER);
    }
    correction.replace(token.start(), token.end(), best);
    return List.of(reading);
  }

  /** The two words that a word was written together from, both of which the index has. */
  private List<Token> split(Token token) throws IOException {
    String word = token.word();
    List<Token> parts = List.of();
    int most = 0;
    for (int at = SHORTEST_PART;
        word.length() >= SHORTEST_COMPOUND && at <= word.length() - SHORTEST_PART;
        at++) {
      String left = word.substring(0, at);
      String right = word.substring(at);
      int pages = Math.min(vocabulary.pagesWith(left), vocabulary.pagesWith(right));
      if (pages > most && !stopWords.isStop(right)) {
        most = pages;
        parts = List.of(token.as(left), token.as(right));
      }
    }
    return parts;
  }

  /** Lets two neighbours stand for the compound that they make, if the index has it. */
  private void join(List<Reading> readings, Correction correction) throws IOException {
    int nearly = 0;
    for (int i = 0; i + 1 < readings.size(); i++) {
      Reading left = readings.get(i);
      Reading right = readings.get(i + 1);
      String joined = left.written().word() + right.written().word();
      if (joined.length() < SHORTEST_COMPOUND) {
        continue;
      }
      if (vocabulary.pagesWith(joined) > 0) {
        left.mayBe(joined, 1);
        right.mayBe(joined, 1);
      } else if (!right.isStop()
          && left.written().word().length() <= LONGEST_FIRST_PART
          && joined.length() >= SHORTEST_MISSPELT_COMPOUND
          && nearly++ < MOST_MISSPELT_COMPOUNDS) {
        joinNearly(left, right, joined, correction);
      }
    }
  }

  private void joinNearly(Reading left, Reading right, String joined, Correction correction)
      throws IOException {
    for (Vocabulary.Similar found : vocabulary.oneEditAway(joined)) {
      left.mayBe(found.word(), ONE_EDIT);
      right.mayBe(found.word(), ONE_EDIT);
      correction.replace(left.written().start(), right.written().end(), found.word());
    }
  }
}
