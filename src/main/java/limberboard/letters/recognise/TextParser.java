package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.search.TextWords;
import limberboard.search.TextWords.TextWord;

/**
 * Reads a letter into words and says how each is meant: denied, over and mended, supposed,
 * believed.
 *
 * <p>Negation is read as NegEx reads it (W. W. Chapman et al., Journal of Biomedical Informatics
 * 34(5), 2001): a phrase negates up to {@value #SCOPE} words behind it, or before it, within its
 * clause and up to an ending phrase. A denied verb is no negation of what is wrong, since "will not
 * start" tells of a fault: there only words that themselves tell of a fault are negated.
 */
final class TextParser {
  private static final int SCOPE = 6;
  private static final int LONGEST = 40_000;
  private static final Pattern REPLY =
      Pattern.compile(
          "^\\s*((re|aw|sv|fwd?|wg|tr|rv|antw)\\s*(\\[\\d+\\])?:\\s*)+", Pattern.CASE_INSENSITIVE);
  private static final Pattern SENTENCE =
      Pattern.compile(
          "[.!?…]+[\"')\\]]*(?=\\s|$)|\\n"
              + "\\s*\\n"
              + "|\\n"
              + "\\s*(?=[-*•]\\s|\\(?[0-9a-z][).]\\s)|\\n"
              + "(?=\\s*p\\.?s\\b)",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern CLAUSE = Pattern.compile("[,;:()]|\\s[-–—]+\\s|[–—]|\\s-\\s");
  private static final Set<String> NOT_VERBS =
      Set.of(
          "not",
          "don't",
          "dont",
          "doesn't",
          "doesnt",
          "didn't",
          "didnt",
          "won't",
          "wont",
          "can't",
          "cant",
          "cannot",
          "wouldn't",
          "wouldnt",
          "couldn't",
          "couldnt",
          "never");

  private final TextWords reader;
  private final KnownWords spelling;
  private final Map<RecordedLetter, LetterText> known = new ConcurrentHashMap<>();
  private final Map<String, LetterText> examples = new ConcurrentHashMap<>();
  private final PhraseFinder cues = new PhraseFinder();

  /**
   * A parser.
   *
   * @param spelling the words of which a misspelt one may be meant
   */
  TextParser(TextWords reader, KnownWords spelling) {
    this.reader = reader;
    this.spelling = spelling;
    for (Map.Entry<String, List<String>> section : WordList.sections("cues.txt").entrySet()) {
      section.getValue().forEach(phrase -> cues.add(reader, phrase, section.getKey()));
    }
  }

  /** All cues in a text. */
  List<PhraseFinder.Match> cues(LetterText text) {
    return cues.in(text.plain());
  }

  /** Reads a letter: its subject and what its writer said. */
  LetterText read(Letter letter) {
    return read(withoutReply(letter.head().subject()), letter.own());
  }

  /** A subject without "Re:" and the like before it. */
  static String withoutReply(String subject) {
    return REPLY.matcher(subject).replaceFirst("");
  }

  /** Reads a recorded letter, once. */
  LetterText recorded(RecordedLetter letter) {
    return known.computeIfAbsent(letter, key -> read(key.letter()));
  }

  /** Reads a sentence of a list, once. */
  LetterText example(String line) {
    return examples.computeIfAbsent(line, key -> read("", key));
  }

  LetterText read(String subject, String own) {
    String all = subject + "\n\n" + own;
    String text = all.length() > LONGEST ? all.substring(0, LONGEST) : all;
    List<TextWord> words = corrected(text, reader.of(text));
    int subjectWords =
        (int) words.stream().takeWhile(word -> word.end() <= subject.length()).count();
    int[] sentences = parts(text, words, SENTENCE);
    int[] clauses = new int[words.size()];
    int[] within = parts(text, words, CLAUSE);
    for (int i = 1; i < clauses.length; i++) {
      boolean same = within[i] == within[i - 1] && sentences[i] == sentences[i - 1];
      clauses[i] = clauses[i - 1] + (same ? 0 : 1);
    }
    List<PhraseFinder.Match> found = cues.in(words);
    Marks marks = new Marks(words, sentences, clauses, found);
    List<SaidWord> said = new ArrayList<>();
    Set<Integer> asked = asked(text, words, sentences);
    for (int i = 0; i < words.size(); i++) {
      said.add(
          new SaidWord(
              words.get(i),
              sentences[i],
              clauses[i],
              marks.denied.get(i),
              marks.negated.get(i),
              marks.over.get(i),
              marks.supposed.get(i),
              marks.believed.get(i),
              asked.contains(sentences[i])));
    }
    return new LetterText(text, said, subjectWords);
  }

  /** The words with misspelt ones put right; a name is left as it is. */
  private List<TextWord> corrected(String text, List<TextWord> words) {
    List<TextWord> corrected = new ArrayList<>();
    for (TextWord word : words) {
      boolean name = Character.isUpperCase(text.charAt(word.start()));
      Optional<TextWord> meant =
          name ? Optional.empty() : spelling.meant(word.word()).flatMap(each -> as(each, word));
      corrected.add(meant.orElse(word));
    }
    return corrected;
  }

  private Optional<TextWord> as(String meant, TextWord written) {
    List<TextWord> read = reader.of(meant);
    return read.size() == 1
        ? Optional.of(read.get(0).at(written.start(), written.end()))
        : Optional.empty();
  }

  private static int[] parts(String text, List<TextWord> words, Pattern boundary) {
    int[] parts = new int[words.size()];
    Matcher matcher = boundary.matcher(text);
    boolean more = matcher.find();
    int part = 0;
    for (int i = 0; i < parts.length; i++) {
      boolean crossed = false;
      while (more && matcher.start() < words.get(i).start()) {
        crossed = crossed || i > 0;
        more = matcher.find();
      }
      part += crossed ? 1 : 0;
      parts[i] = part;
    }
    return parts;
  }

  private static Set<Integer> asked(String text, List<TextWord> words, int[] sentences) {
    Set<Integer> asked = new HashSet<>();
    for (int i = 0; i < words.size(); i++) {
      boolean last = i + 1 == words.size() || sentences[i + 1] != sentences[i];
      if (last) {
        int to = Math.min(text.length(), words.get(i).end() + 3);
        if (text.substring(words.get(i).end(), to).stripLeading().startsWith("?")) {
          asked.add(sentences[i]);
        }
      }
    }
    return asked;
  }

  /** What cues do to the words around them. */
  private static final class Marks {
    private final BitSet denied = new BitSet();
    private final BitSet negated = new BitSet();
    private final BitSet over = new BitSet();
    private final BitSet supposed = new BitSet();
    private final BitSet believed = new BitSet();
    private final List<TextWord> words;
    private final int[] sentences;
    private final int[] clauses;

    Marks(List<TextWord> words, int[] sentences, int[] clauses, List<PhraseFinder.Match> found) {
      this.words = words;
      this.sentences = sentences;
      this.clauses = clauses;
      BitSet ends = starts(found, "ends a negation");
      BitSet seeming = new BitSet();
      for (PhraseFinder.Match match : found) {
        if (match.label().equals("only looks like a negation") && match.length() > 1) {
          seeming.set(match.from(), match.to());
        }
      }
      Set<Integer> past = new HashSet<>();
      Set<Integer> cured = new HashSet<>();
      for (PhraseFinder.Match match : found) {
        switch (match.label()) {
          case "negates what follows" -> {
            if (!seeming.get(match.from())
                || NOT_VERBS.contains(words.get(match.to() - 1).word())) {
              forward(match, ends, seeming.get(match.from()));
            }
          }
          case "negates what stands before" -> backward(match);
          case "supposed" -> restOfClause(match, supposed);
          case "believed" -> restOfClause(match, believed);
          case "in the past" -> past.add(sentences[match.from()]);
          case "cured" -> {
            if (!denied(match)) {
              cured.add(sentences[match.from()]);
            }
          }
          default -> {}
        }
      }
      for (int i = 0; i < words.size(); i++) {
        boolean after =
            cured.contains(sentences[i])
                || cured.contains(sentences[i] + 1) && past.contains(sentences[i]);
        if (cured.contains(sentences[i])
            || after
            || past.contains(sentences[i]) && cured.contains(sentences[i] - 1)) {
          over.set(i);
        }
      }
    }

    private boolean denied(PhraseFinder.Match match) {
      return denied.get(match.from());
    }

    private static BitSet starts(List<PhraseFinder.Match> found, String label) {
      BitSet starts = new BitSet();
      found.stream().filter(m -> m.label().equals(label)).forEach(m -> starts.set(m.from()));
      return starts;
    }

    private void forward(PhraseFinder.Match match, BitSet ends, boolean seeming) {
      boolean verb = NOT_VERBS.contains(words.get(match.to() - 1).word());
      int last = Math.min(words.size(), match.to() + SCOPE);
      for (int i = match.to(); i < last; i++) {
        if (clauses[i] != clauses[match.from()] || ends.get(i)) {
          return;
        }
        denied.set(i);
        if (!verb || words.get(i).fault()) {
          negated.set(i);
        }
      }
    }

    private void backward(PhraseFinder.Match match) {
      for (int i = match.from() - 1; i >= Math.max(0, match.from() - SCOPE); i--) {
        if (clauses[i] != clauses[match.from()]) {
          return;
        }
        denied.set(i);
        negated.set(i);
      }
    }

    private void restOfClause(PhraseFinder.Match match, BitSet into) {
      for (int i = match.to(); i < words.size() && sentences[i] == sentences[match.from()]; i++) {
        if (clauses[i] > clauses[match.from()] + 1) {
          return;
        }
        into.set(i);
      }
    }
  }
}
