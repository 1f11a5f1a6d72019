package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.letters.AnswerAs.Kind;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.letters.answer.DraftBlock;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.inbox.LetterState;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LetterModelTest {
  private static final String SYMPTOM = "wet-locker";
  private static final String LIKELY = SYMPTOM + "/likely";
  @TempDir Path folder;
  private SmallLetters letters;
  private LetterModel model;

  @BeforeEach
  void open() {
    letters = new SmallLetters(folder, Runnable::run).usual().read();
    model = letters.model;
    letters.inbox.look();
    letters.inbox.choose("wet.eml");
  }

  private Understanding understood() {
    return model.letter().orElseThrow().understood();
  }

  private DraftBlock piece(String id) {
    return model.answer().block(id).orElseThrow();
  }

  private String state() throws IOException {
    return Files.readString(letters.file("wet.eml.state"));
  }

  @Test
  void saysBoatSymptomAndAnswersWithTheirReasons() {
    assertThat(understood().fitting().orElseThrow().boat().id()).isEqualTo("knot");
    assertThat(understood().boatWhy()).isEqualTo("By her name, Knot.");
    assertThat(understood().chosen()).containsExactly(SYMPTOM);
    assertThat(understood().answers(SYMPTOM)).containsEntry("when", "after-rain");
    assertThat(understood().about()).isEqualTo(AnswerAs.of(Kind.FAULTS));
    assertThat(model.answer().text()).contains("Ada Lind").contains("Knot");
  }

  @Test
  void anotherBoatIsAnsweredForAndKept() throws IOException {
    model.boat(Optional.of("stint"));
    assertThat(understood().boatWhy()).isEqualTo("As you said.");
    assertThat(model.answer().text()).contains("Stint").doesNotContain("Knot");
    assertThat(state()).contains("boat: \"stint\"");
    letters.inbox.choose("gas.eml");
    letters.inbox.choose("wet.eml");
    assertThat(understood().fitting().orElseThrow().boat().id()).isEqualTo("stint");
    model.boat(Optional.of(LetterSaid.NONE));
    assertThat(understood().fitting()).isEmpty();
    assertThat(model.answer().block("which-boat")).isPresent();
  }

  @Test
  void aChangeRedraftsWhatNobodyTouchedAndKeepsWhatSomebodyDid() {
    String told = piece(SYMPTOM + "/told").text();
    model.edit(LIKELY, "It is the gasket.");
    model.answer(SYMPTOM, "when", "after-washing");
    assertThat(piece(LIKELY).text()).isEqualTo("It is the gasket.\n");
    assertThat(piece(LIKELY).groundsChanged()).isTrue();
    assertThat(piece(SYMPTOM + "/told").text()).isNotEqualTo(told).contains("after washing");
    model.answer(SYMPTOM, "when", "after-rain");
    assertThat(piece(LIKELY).groundsChanged()).isFalse();
    model.asWritten(LIKELY);
    assertThat(piece(LIKELY).isEdited()).isFalse();
  }

  @Test
  void whatWasEditedIsThereWhenTheLetterIsOpenedAgain() throws IOException {
    model.edit("closing", "See you on Friday.");
    letters.inbox.choose("gas.eml");
    assertThat(state()).contains("See you on Friday.");
    letters.inbox.choose("wet.eml");
    assertThat(model.answer().text()).endsWith("See you on Friday.\n");
    SmallLetters again = new SmallLetters(folder.resolve("other"), Runnable::run);
    again.write("wet.eml", SmallLetters.WET).write("wet.eml.state", state()).read();
    again.inbox.look();
    again.inbox.choose("wet.eml");
    assertThat(again.model.answer().text()).endsWith("See you on Friday.\n");
  }

  @Test
  void anAnswerTakenBackIsNotToldAnyMore() {
    model.answer(SYMPTOM, "when", LetterSaid.TAKEN_BACK);
    assertThat(understood().answers(SYMPTOM)).isEmpty();
    assertThat(model.answer().block(SYMPTOM + "/told")).isEmpty();
  }

  @Test
  void anotherSymptomInPlaceOfTheOneThatWasSeen() {
    model.symptom(SYMPTOM, false);
    assertThat(understood().about()).isEqualTo(AnswerAs.of(Kind.NOT_COVERED));
    assertThat(model.answer().block("not-covered")).isPresent();
    model.symptom(SYMPTOM, true);
    assertThat(model.answer().block(LIKELY)).isPresent();
  }

  @Test
  void aPersonSaysThatItIsUrgentAndThatItIsNot() {
    model.urgent(Optional.of("gas can be smelt"));
    assertThat(letters.row("wet.eml").isUrgent()).isTrue();
    assertThat(model.answer().blocks().get(0).id()).isEqualTo("urgent/1");
    model.urgent(Optional.empty());
    assertThat(letters.row("wet.eml").isUrgent()).isFalse();
    letters.inbox.choose("gas.eml");
    assertThat(model.answer().blocks().get(0).id()).isEqualTo("urgent/1");
  }

  @Test
  void theStateIsKeptWithItsDay() throws IOException {
    model.state(LetterState.ANSWERED);
    assertThat(state()).startsWith("state: answered\nsince: 2026-05-20\n");
    assertThat(letters.row("wet.eml").state()).isEqualTo(LetterState.ANSWERED);
  }

  @Test
  void aDamagedStateIsLeftAloneAndSaid() throws IOException {
    letters.write("odd.eml", SmallLetters.WET).write("odd.eml.state", "state: [\n");
    letters.inbox.look();
    letters.inbox.choose("odd.eml");
    assertThat(model.trouble()).contains("odd.eml.state");
    model.state(LetterState.CLOSED);
    assertThat(letters.notices.current().orElseThrow().text()).startsWith("Not noted: ");
    assertThat(Files.readString(letters.file("odd.eml.state"))).isEqualTo("state: [\n");
  }

  @Test
  void aLetterThatIsGoneIsSaid() throws IOException {
    Files.delete(letters.file("gas.eml"));
    letters.inbox.choose("gas.eml");
    assertThat(model.trouble()).startsWith("This letter cannot be read: ");
    letters.inbox.choose("wet.eml");
    assertThat(model.letter()).isPresent();
  }

  @Test
  void whatIsEditedStaysWhenTheWorkspaceIsReadAgain() throws IOException {
    model.edit("closing", "Mine.");
    Path page = letters.folders.articles().resolve("symptoms/wet-locker.md");
    Files.writeString(
        page, Files.readString(page).replace("The gasket no longer seals", "The gasket is flat"));
    letters.session.replace(SmallWorkspace.read(letters.folders));
    assertThat(model.answer().text()).contains("The gasket is flat").endsWith("Mine.\n");
  }

  @Test
  void recordedExpectationsStayAsTheyAre() throws IOException {
    String expected = "kind: fault\nboat: knot\nsymptoms: [wet-locker]\nanswers: {}\n";
    letters.write("wet.yaml", expected);
    model.boat(Optional.of("stint"));
    model.state(LetterState.CLOSED);
    assertThat(Files.readString(letters.file("wet.yaml"))).isEqualTo(expected);
  }
}
