package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.letters.AnswerAs.Kind;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.mail.MailReader;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.trace.TrailStep;
import org.junit.jupiter.api.Test;

class UnderstandingTest {
  private static final Workspace WORKSPACE = SmallWorkspace.read();
  private static final Words WORDS = new Words("after rain", 0, 10);

  private static Understanding of(boolean fault, Optional<String> boat, Suspect... suspects) {
    Recognition seen =
        new Recognition(
            "text",
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            fault,
            fault ? 0.9 : 0.1,
            List.of(suspects),
            Map.of("wet-locker", List.of(new GivenAnswer("when", "after-rain", WORDS))));
    return new Understanding(
        WORKSPACE,
        SmallWorkspace.TODAY,
        MailReader.pasted("text"),
        seen,
        boat.flatMap(WORKSPACE::boat).map(known -> new Fitting(known, SmallWorkspace.TODAY)),
        LetterSaid.NOTHING);
  }

  private static Suspect suspect(String id, double chance) {
    return new Suspect(id, chance, List.of());
  }

  @Test
  void whatIsAsLikelyAsNotIsTaken() {
    Understanding letter =
        of(true, Optional.of("knot"), suspect("wet-locker", 0.6), suspect("gas-smell", 0.4));
    assertThat(letter.chosen()).containsExactly("wet-locker");
    assertThat(letter.about().kind()).isEqualTo(Kind.FAULTS);
    assertThat(letter.toAnswer().about()).isInstanceOf(ToAnswer.Faults.class);
  }

  @Test
  void oneThatIsLessLikelyIsTakenWhereThereIsNoOther() {
    assertThat(of(true, Optional.empty(), suspect("wet-locker", 0.3)).chosen())
        .containsExactly("wet-locker");
  }

  @Test
  void severalThatAreNotSureAreAskedFor() {
    Understanding letter =
        of(true, Optional.empty(), suspect("wet-locker", 0.4), suspect("gas-smell", 0.35));
    assertThat(letter.about().kind()).isEqualTo(Kind.WHICH_SYMPTOM);
    assertThat(letter.toAnswer().about()).isInstanceOf(ToAnswer.SymptomUnsure.class);
  }

  @Test
  void withoutABoatItIsAskedWhich() {
    assertThat(of(true, Optional.empty(), suspect("wet-locker", 0.9)).toAnswer().about())
        .isEqualTo(new ToAnswer.BoatUnknown());
  }

  @Test
  void noSymptomIsAFaultWithoutAPageOrNoFault() {
    assertThat(of(true, Optional.empty()).about().kind()).isEqualTo(Kind.NOT_COVERED);
    assertThat(of(false, Optional.empty()).about().kind()).isEqualTo(Kind.NO_FAULT);
  }

  @Test
  void whatAPersonSaidGoesBeforeWhatWasSeen() {
    Understanding seen = of(false, Optional.of("knot"), suspect("gas-smell", 0.9));
    Understanding said =
        seen.saying(
            LetterSaid.NOTHING
                .of(Optional.of("stint"))
                .telling(List.of("wet-locker"))
                .answering("wet-locker", "clip", Optional.of(LetterSaid.CANNOT_TELL))
                .answering("wet-locker", "when", Optional.of(LetterSaid.TAKEN_BACK)));
    assertThat(said.fitting().orElseThrow().boat().id()).isEqualTo("stint");
    assertThat(said.chosen()).containsExactly("wet-locker");
    assertThat(said.symptoms()).containsExactly("gas-smell", "wet-locker");
    assertThat(said.about().kind()).isEqualTo(Kind.FAULTS);
    assertThat(said.steps("wet-locker")).containsExactly(new TrailStep.CouldNotTell("clip"));
    assertThat(said.words("wet-locker", "when")).isEmpty();
    assertThat(seen.words("wet-locker", "when")).contains("after rain");
    assertThat(seen.steps("wet-locker"))
        .containsExactly(new TrailStep.Answered("when", "after-rain"));
  }

  @Test
  void aBoatThatCannotHaveItIsNotAnsweredForIt() {
    Understanding letter = of(true, Optional.of("stint"), suspect("gas-smell", 0.9));
    assertThat(letter.fits("gas-smell")).isFalse();
    assertThat(letter.toAnswer().about()).isEqualTo(new ToAnswer.NotCovered());
  }

  @Test
  void symptomsAndAnswersThatAreNoMoreAreLeftOut() {
    Understanding letter =
        of(true, Optional.of("knot"), suspect("gone", 0.9), suspect("wet-locker", 0.8))
            .saying(LetterSaid.NOTHING.answering("wet-locker", "when", Optional.of("no-such")));
    assertThat(letter.chosen()).containsExactly("wet-locker");
    ToAnswer.Faults faults = (ToAnswer.Faults) letter.toAnswer().about();
    assertThat(faults.traces().get(0).trail()).isEmpty();
  }

  @Test
  void aKindOfAnswerIsReadAsItWasWritten() {
    for (AnswerAs kind : AnswerAs.all(WORKSPACE.library())) {
      assertThat(AnswerAs.read(kind.written())).contains(kind);
    }
    assertThat(AnswerAs.read("no-fault booking")).contains(new AnswerAs(Kind.NO_FAULT, "booking"));
    assertThat(AnswerAs.read("nonsense")).isEmpty();
  }
}
