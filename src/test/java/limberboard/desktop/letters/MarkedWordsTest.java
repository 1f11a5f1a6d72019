package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import limberboard.letters.mail.Passage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkedWordsTest {
  @TempDir Path folder;

  private List<String> marked(String text) {
    SmallLetters letters =
        new SmallLetters(folder.resolve("" + text.hashCode()), Runnable::run)
            .write("a.eml", text)
            .read();
    letters.inbox.look();
    letters.inbox.choose("a.eml");
    Understanding letter = letters.model.letter().orElseThrow().understood();
    List<Passage> passages = letter.letter().passages();
    List<List<LetterArea.Mark>> marks = new MarkedWords(letter).passages();
    List<String> words = new java.util.ArrayList<>();
    for (int i = 0; i < passages.size(); i++) {
      String said = passages.get(i).text();
      marks.get(i).forEach(mark -> words.add(said.substring(mark.start(), mark.end())));
    }
    return words;
  }

  @Test
  void theWordsThatLedThereAreMarkedWhereTheyStand() {
    assertThat(marked(SmallLetters.WET)).contains("Knot", "soaked", "puddle");
    assertThat(marked(SmallLetters.GAS)).anyMatch(words -> words.contains("smell of gas"));
  }

  @Test
  void betweenQuotedLinesTheyStandAtTheirPlacesToo() {
    String between =
        "Subject: Re: locker\n\n> Which boat?\nKnot.\n> What is it?\nThe locker is soaked,"
            + " puddle under the lid.\n";
    assertThat(marked(between)).contains("Knot", "soaked", "puddle");
  }
}
