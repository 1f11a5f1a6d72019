package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import limberboard.letters.recognise.LetterText.SaidWord;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.TextWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the words of a letter are meant. */
class TextParserTest {
  private static final TextParser PARSER =
      new TextParser(
          TextWords.read(new WorkspaceFolders(Path.of("")), List.of()),
          new KnownWords(Stream.of("engine steam bilge rust")));

  private static List<String> words(String text, Predicate<SaidWord> which) {
    return PARSER.read("", text).words().stream()
        .filter(which)
        .map(each -> each.word().word())
        .toList();
  }

  /**
   * By NegEx's own rules: what follows a negation is negated up to a clause's end or an ending
   * phrase, what follows a seeming one is not, and a phrase behind negates what stands before it.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "There is no water in the bilge | water | true",
        "There is no water, but oil | oil | false",
        "No water but plenty of oil | oil | false",
        "The floor is free of rust | rust | true",
        "Not only rust but a crack | crack | false",
        "A leak was ruled out | leak | true",
        "No doubt it is rust | rust | false",
        "She does not smell | smell | true",
        "The engine does not start | start | false",
        "The keel will not stay up | stay | false",
        "Without a drop of rain | rain | true",
      })
  void negationsReachWhatTheyNegate(String text, String word, boolean negated) {
    assertThat(words(text, SaidWord::negated).contains(word)).isEqualTo(negated);
  }

  @Test
  void aVerbThatIsDeniedIsStillSaidToBeDenied() {
    assertThat(words("The battery does not charge", SaidWord::denied)).contains("charge");
    assertThat(words("The battery does not charge", SaidWord::negated)).doesNotContain("charge");
  }

  @Test
  void whatIsOverAndMendedIsTold() {
    assertThat(words("Last year we smelt gas, the fitter mended it.", SaidWord::over))
        .contains("smelt", "gas");
    assertThat(words("The hose was replaced. Now it leaks again.", SaidWord::over))
        .contains("hose")
        .doesNotContain("leaks");
    assertThat(words("It leaks since last year.", SaidWord::over)).isEmpty();
  }

  @Test
  void whatIsSupposedOrBelievedIsTold() {
    assertThat(words("What do we do if the mast falls?", SaidWord::supposed)).contains("mast");
    assertThat(words("Hamish thinks it is the keel. It drips.", SaidWord::believed))
        .contains("keel")
        .doesNotContain("drips");
    assertThat(words("Is it the keel? It drips.", SaidWord::asked))
        .contains("keel")
        .doesNotContain("drips");
  }

  @Test
  void sentencesAndClausesAreApart() {
    LetterText text =
        PARSER.read("Re: leak", "It reads 12.4 volts, no less. Then it fell.\n\nWhy?");
    assertThat(text.subjectWords()).isEqualTo(2);
    assertThat(text.sentences()).isEqualTo(4);
    assertThat(text.ofSentence(2))
        .extracting(w -> w.word().word())
        .containsExactly("then", "it", "fell");
    assertThat(TextParser.withoutReply("Re: AW: Fwd: leak")).isEqualTo("leak");
  }

  @Test
  void nothingIsNothing() {
    assertThat(PARSER.read("", "").words()).isEmpty();
    assertThat(PARSER.read("", "").sentences()).isZero();
  }
}
