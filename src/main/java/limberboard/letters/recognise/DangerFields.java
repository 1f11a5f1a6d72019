package limberboard.letters.recognise;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.search.TextWords;

/** The fields of everyday words out of which danger is told. Immutable. */
final class DangerFields {
  private final PhraseFinder fields = new PhraseFinder();

  DangerFields(TextWords reader) {
    for (String line : WordList.lines("fields.txt")) {
      int colon = line.indexOf(':');
      String field = line.substring(0, colon).strip();
      WordList.phrases(line.substring(colon + 1))
          .forEach(phrase -> fields.addStems(reader, phrase, field));
    }
  }

  /** The fields that are met in words that stand together, with how they are meant. */
  Set<String> in(List<SaidWord> words) {
    Set<String> met = new HashSet<>();
    for (PhraseFinder.Match match : fields.inStems(words.stream().map(SaidWord::word).toList())) {
      boolean so = true;
      for (int i = match.from(); i < match.to(); i++) {
        so = so && words.get(i).isSo();
      }
      met.add((so ? "" : "~") + match.label());
    }
    return met;
  }
}
