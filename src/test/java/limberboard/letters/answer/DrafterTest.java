package limberboard.letters.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.NotEntered;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.ToAnswer.About;
import limberboard.letters.recognise.Recognition;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Wording;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Drafts of answers to letters of many kinds, on the demo. */
class DrafterTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 29);
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Fitting boat(String id) {
    return new Fitting(workspace.boat(id).orElseThrow(), ON);
  }

  private static Trace trace(String symptom, Fitting boat) {
    return Trace.begin(
        Fault.of(
            workspace.library().symptom(symptom).orElseThrow(),
            boat,
            workspace.library(),
            workspace.cases()));
  }

  private static AnswerDraft draft(Optional<Fitting> boat, List<String> urgent, About about) {
    return new Drafter(workspace.library()).draft(new ToAnswer("Ms Byrd", boat, urgent, about));
  }

  private static AnswerDraft faults(Trace... traces) {
    return draft(
        Optional.of(traces[0].fault().fitting()), List.of(), new ToAnswer.Faults(List.of(traces)));
  }

  @Test
  void aLetterAboutSmellOfGasIsAnsweredByTheImmediateStepsAndLeftToALicensedFitter() {
    for (About about : List.of(new ToAnswer.NotCovered(), new ToAnswer.BoatUnknown())) {
      AnswerDraft draft = draft(Optional.empty(), List.of("gas can be smelt"), about);
      String text = draft.text();
      assertThat(text).startsWith("Please do this now");
      assertThat(text.substring(0, text.indexOf("Dear Ms Byrd")))
          .contains("Put out all flames. Touch no switch.")
          .contains("Get everybody off the boat.")
          .contains("licensed gas fitter")
          .contains("Only the gas fitter may work on the gas system.")
          .contains("Caution: Gas on board")
          .contains("One spark, even from a switch or a bilge pump, blows the boat apart.")
          .contains("call the emergency services from ashore");
    }
  }

  @Test
  void whatCannotWaitComesFirstAlsoWhenTheLibraryHasNoWordsForIt() {
    AnswerDraft draft =
        new Drafter(Library.empty())
            .draft(
                new ToAnswer(
                    "", Optional.empty(), List.of("the mast leans"), new ToAnswer.NotCovered()));
    assertThat(draft.text())
        .startsWith("Please read this first. You write that the mast leans.")
        .contains("coastguard")
        .contains("Hello owner,");
  }

  @Test
  void aDangerThatNobodyCanNameBeginsWithWhomToCall() {
    AnswerDraft draft =
        draft(Optional.empty(), List.of(Recognition.Urgent.UNNAMED), new ToAnswer.BoatUnknown());
    assertThat(draft.text())
        .startsWith("Please read this first. What you write sounds as if somebody or the boat");
    assertThat(draft.text().substring(0, draft.text().indexOf("Dear Ms Byrd")))
        .contains("Call the emergency number now, 112 in Europe.")
        .contains("Mayday on VHF channel 16")
        .contains("do not use the boat before you have spoken to the yard");
  }

  @Test
  void whatMayBeAnEmergencyStandsInFullBeforeTheLikeliestCauses() {
    String text = faults(trace("water-in-main-bilge", boat("sanderling"))).text();
    int danger = text.indexOf("A 25 mm hole half a metre under water");
    assertThat(danger).isPositive().isLessThan(text.indexOf("This is what it may be"));
    assertThat(text).contains("The coastguard or rescue service comes before this page");
  }

  @Test
  void atMostThreeChecksAreAskedForAndTheFirstIsThePlannersNext() {
    Trace trace = trace("water-in-forward-cabin", boat("sanderling"));
    AnswerDraft draft = faults(trace);
    assertThat(draft.questions()).hasSizeBetween(1, 3).doesNotHaveDuplicates();
    assertThat(draft.questions().get(0).check()).isEqualTo(trace.next().id());
    for (int i = 0; i < draft.questions().size(); i++) {
      AskedCheck asked = draft.questions().get(i);
      String block = draft.block(asked.symptom() + "/check/" + asked.check()).orElseThrow().text();
      assertThat(block).startsWith((i + 1) + ". ").contains("Write back: " + (i + 1) + " and");
      asked
          .answers()
          .forEach(answer -> assertThat(block).contains("“" + answer.replace('-', ' ') + "”"));
    }
  }

  @Test
  void twoFaultsAreBothAnsweredWithTheirChecksCountedOn() {
    AnswerDraft draft =
        faults(
            trace("water-in-forward-cabin", boat("sanderling")),
            trace("battery-goes-flat", boat("sanderling")));
    List<String> symptoms = draft.questions().stream().map(AskedCheck::symptom).distinct().toList();
    assertThat(symptoms).containsExactly("water-in-forward-cabin", "battery-goes-flat");
    String text = draft.text();
    for (int i = 1; i <= draft.questions().size(); i++) {
      assertThat(text).contains("\n" + i + ". ", "Write back: " + i + " and");
    }
    assertThat(draft.block("water-in-forward-cabin/likely")).isPresent();
    assertThat(draft.block("battery-goes-flat/likely")).isPresent();
  }

  @Test
  void aMendIsToldWithItsStepsItsMaterialsAndAmountsAndWhenToLookAgain() {
    Trace trace = trace("water-in-forward-cabin", boat("sanderling"));
    for (int i = 0; i < 12 && !(trace.next() instanceof NextStep.DoMend); i++) {
      trace = towards(trace, "deck-fitting");
    }
    assertThat(trace.next()).isInstanceOf(NextStep.DoMend.class);
    assertThat(trace.next().id()).isEqualTo("rebed-deck-fitting");
    String text = faults(trace).text();
    assertThat(text)
        .contains("This work should help: re-bed")
        .contains("Step 1. ")
        .containsPattern("Materials: .*, [0-9.]+ (ml|g|m|mm)")
        .contains("Look again: after")
        .contains("Who: ");
    assertThat(text.indexOf("Caution: ")).isPositive().isLessThan(text.indexOf("Step 1. "));
  }

  /** Gives the answer under which a cause is most probable. */
  private static Trace towards(Trace trace, String cause) {
    if (!(trace.next() instanceof NextStep.DoCheck check)) {
      return trace.mendTried(((NextStep.DoMend) trace.next()).cause().id());
    }
    Trace best = trace;
    double most = -1;
    for (String answer : check.check().answers()) {
      Trace then = trace.answer(check.id(), answer);
      double chance =
          then.ranking().stream()
              .filter(ranked -> ranked.cause().id().equals(cause))
              .findFirst()
              .orElseThrow()
              .chance();
      if (chance > most) {
        most = chance;
        best = then;
      }
    }
    return best;
  }

  @Test
  void whatTheOwnerHasToldIsSaidBack() {
    Trace trace = trace("water-in-forward-cabin", boat("sanderling")).answer("taste", "salt");
    assertThat(faults(trace).text())
        .contains("This is what you have told us:\n\n- Does the water taste of salt? salt.");
  }

  @Test
  void allChancesAreCalledEstimatesWithWhereTheyComeFrom() {
    String text = faults(trace("play-in-steering", boat("dunlin"))).text();
    assertThat(text)
        .contains("The chances are an estimate")
        .containsPattern("come from: .*(workshop|case)");
  }

  @Test
  void aBoatKnownByHerModelOnlyIsAnsweredForAndAskedFor() {
    Boat boat =
        NotEntered.boat(
            workspace.library().model("tarnwick-26").orElseThrow(),
            2018,
            new HashMap<>(),
            Water.SALT,
            Use.PRIVATE);
    AnswerDraft draft = faults(trace("water-in-forward-cabin", new Fitting(boat, ON)));
    assertThat(draft.text()).contains("Please send us her hull number or her name.");
    assertThat(draft.questions()).isNotEmpty();
    assertThat(faults(trace("water-in-forward-cabin", boat("whimbrel"))).block("model-only"))
        .isEmpty();
  }

  @Test
  void whoIsUnsureAsksOneQuestion() {
    assertThat(draft(Optional.empty(), List.of(), new ToAnswer.BoatUnknown()).text())
        .contains("What is her hull number or her name?")
        .containsOnlyOnce("?");
    Library library = workspace.library();
    AnswerDraft which =
        draft(
            Optional.of(boat("dunlin")),
            List.of(),
            new ToAnswer.SymptomUnsure(
                List.of(
                    library.symptom("play-in-steering").orElseThrow(),
                    library.symptom("toilet-smells").orElseThrow())));
    assertThat(which.text())
        .contains("Which of these is it?", "- 1. ", "- 2. ")
        .containsOnlyOnce("?");
  }

  @Test
  void whatTheLibraryDoesNotCoverIsSaidSoWithWhatToSend() {
    assertThat(draft(Optional.empty(), List.of(), new ToAnswer.NotCovered()).text())
        .contains("We have no page about this fault yet")
        .contains("the hull number of your boat")
        .contains("- two photographs");
  }

  @Test
  void whoseBoatIsKnownIsNotAskedForHer() {
    assertThat(draft(Optional.of(boat("dunlin")), List.of(), new ToAnswer.NotCovered()).text())
        .contains("We have no page about this fault yet")
        .contains("- two photographs")
        .doesNotContain("hull number");
  }

  @Test
  void whatIsNoFaultIsAnsweredShortlyAndJunkNotAtAll() {
    Map<String, String> said =
        Map.of("booking", "a date", "question", "your question", "thanks", "kind letter", "x", "");
    said.forEach(
        (matter, words) -> {
          AnswerDraft draft = draft(Optional.empty(), List.of(), new ToAnswer.NoFault(matter));
          assertThat(draft.text()).contains("Dear Ms Byrd", words, "Thank you for your");
          assertThat(draft.questions()).isEmpty();
        });
    AnswerDraft none = draft(Optional.empty(), List.of(), new ToAnswer.NoAnswer());
    assertThat(none.isEmpty()).isTrue();
    assertThat(none.text()).isEmpty();
  }

  @Test
  void everyChangeOfTheTraceLeavesWhatAPersonHasEdited() {
    Trace trace = trace("water-in-forward-cabin", boat("sanderling"));
    AnswerDraft first = faults(trace);
    AskedCheck asked = first.questions().get(0);
    String likely = "water-in-forward-cabin/likely";
    AnswerDraft mine = first.edited(likely, "My own view.").edited("closing", "Yours, Jo");
    AnswerDraft then = mine.redrafted(faults(trace.answer(asked.check(), asked.answers().get(0))));
    assertThat(then.block(likely).orElseThrow().groundsChanged()).isTrue();
    assertThat(then.block("closing").orElseThrow().groundsChanged()).isFalse();
    assertThat(then.text()).contains("My own view.", "Yours, Jo", "This is what you have told us");
    assertThat(then.block("water-in-forward-cabin/check/" + asked.check())).isEmpty();
  }

  @Test
  void namesMarkNothingUpAndNoWordingCanTakeACautionAway() {
    Fitting whimbrel = boat("whimbrel");
    ToAnswer letter =
        new ToAnswer(
            "*Jo* {boat} <b>x</b> [a](http://b.example)",
            Optional.of(whimbrel),
            List.of(),
            new ToAnswer.Faults(List.of(trace("keel-will-not-stay-up", whimbrel))));
    AnswerDraft draft = new Drafter(workspace.library()).draft(letter);
    assertThat(draft.text()).startsWith("Dear *Jo* {boat} <b>x</b> [a](http://b.example),");
    assertThat(draft.html()).doesNotContain("<b>x</b>").doesNotContain("href");
    List<Page<?>> bare =
        workspace.library().pages().stream()
            .filter(page -> page.as(Wording.class).isEmpty())
            .<Page<?>>map(page -> page)
            .toList();
    AnswerDraft plain = new Drafter(new Library(bare, Map.of(), List.of())).draft(letter);
    List<DraftBlock> cautions =
        draft.blocks().stream().filter(block -> block.id().contains("/caution/")).toList();
    assertThat(cautions).hasSizeGreaterThanOrEqualTo(2);
    assertThat(plain.blocks()).containsAll(cautions);
  }
}
