package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.Drafter;
import limberboard.letters.answer.ToAnswer;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Caution;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.StepOutcome;
import limberboard.trace.Trace;
import limberboard.words.Sentences;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every draft names every caution of every work that it tells to do, before the first of it, and
 * can be read by somebody whose second language is English: on all boats, for all symptoms, at
 * every stage from the first letter to the mend or the yard.
 */
class DraftCautionsTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 29);
  private static final int MOST_LETTERS = 8;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  static List<String> boats() throws IOException {
    read();
    return workspace.boats().stream().map(Boat::id).toList();
  }

  @ParameterizedTest
  @MethodSource("boats")
  void everyDraftHasAllCautionsAndIsPlainEnglish(String id) {
    Fitting boat = new Fitting(workspace.boat(id).orElseThrow(), ON);
    Library library = workspace.library();
    Random random = new Random(id.hashCode());
    Set<String> kinds = new TreeSet<>();
    int drafts = 0;
    for (Page<Symptom> symptom : library.all(Symptom.class)) {
      if (boat.fits(symptom.head().fits())) {
        Trace trace = Trace.begin(Fault.of(symptom, boat, library, workspace.cases()));
        for (int letters = 0; letters < MOST_LETTERS; letters++) {
          AnswerDraft draft = draft(boat, trace);
          check(library, boat, trace, draft);
          drafts++;
          kinds.add(trace.next().kind());
          Optional<Trace> then = next(trace, draft, random);
          if (then.isEmpty()) {
            break;
          }
          trace = then.get();
        }
      }
    }
    assertThat(drafts).isGreaterThan(10);
    assertThat(kinds).contains("check", "mend");
  }

  private static AnswerDraft draft(Fitting boat, Trace trace) {
    return new Drafter(workspace.library())
        .draft(new ToAnswer("", Optional.of(boat), List.of(), new ToAnswer.Faults(List.of(trace))));
  }

  /** The answers of an owner who answers everything that was asked for, as chance has it. */
  private static Optional<Trace> next(Trace trace, AnswerDraft draft, Random random) {
    Trace then = trace;
    for (AskedCheck asked : draft.questions()) {
      then =
          then.answer(asked.check(), asked.answers().get(random.nextInt(asked.answers().size())));
    }
    if (!draft.questions().isEmpty()) {
      return Optional.of(then);
    }
    List<StepOutcome> outcomes = trace.outcomes(trace.next());
    return outcomes.stream().flatMap(outcome -> outcome.then().stream()).findFirst();
  }

  private static void check(Library library, Fitting boat, Trace trace, AnswerDraft draft) {
    String what = boat.boat().id() + ", " + trace.fault().page().id() + ", " + trace.answers();
    String text = draft.text();
    String grounds = text.replaceAll("\\s+", " ");
    WantedCautions wanted = new WantedCautions(library, boat);
    Symptom symptom = trace.fault().page().details();
    Set<String> all = new TreeSet<>(wanted.named(symptom.first()));
    List<String> begins = new ArrayList<>();
    for (AskedCheck asked : draft.questions()) {
      Check check =
          symptom.checks().stream()
              .filter(c -> c.id().equals(asked.check()))
              .findFirst()
              .orElseThrow();
      all.addAll(wanted.of(check));
      begins.add(check.ask());
    }
    if (trace.next() instanceof NextStep.DoMend mend) {
      all.addAll(wanted.of(library.procedure(mend.id()).orElseThrow()));
      begins.add("This work should help:");
    } else if (trace.next() instanceof NextStep.MakeSafe safe) {
      all.addAll(wanted.of(safe.check().check()));
      begins.add(safe.how());
    } else if (trace.next() instanceof NextStep.CallYard) {
      for (FaultCause cause : trace.fault().causes()) {
        Optional<Page<Procedure>> page = library.procedure(cause.mend());
        if (page.isPresent() && text.contains("The work would be: " + lowered(page.get()))) {
          all.addAll(wanted.of(page.get()));
          begins.add("The work would be:");
        }
      }
    }
    if (!(trace.next() instanceof NextStep.CallYard)) {
      assertThat(begins).as(what).isNotEmpty();
    }
    // An answer that was given is said back before the cautions, so look from the last mention on.
    int first =
        begins.stream()
            .mapToInt(begin -> grounds.lastIndexOf(begin))
            .min()
            .orElse(grounds.length());
    for (String caution : all) {
      Page<Caution> page = library.caution(caution).orElseThrow();
      String named = "Caution: " + page.title();
      assertThat(grounds).as(what).contains(named);
      assertThat(grounds.indexOf(named)).as(what + ", " + caution).isBetween(0, first);
    }
    assertThat(Readability.of(draft)).as(what).isLessThanOrEqualTo(Readability.HARDEST);
  }

  private static String lowered(Page<Procedure> page) {
    return Sentences.lowered(page.title());
  }
}
