package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.MendFailed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DiagnosticTreeTest {
  private static final double EXACT = 1e-9;
  private static final double RAREST = 0.005;
  private static final LocalDate A_DAY = LocalDate.of(2026, 6, 1);

  private final DiagnosticTree leak = DiagnosticTree.of(Trace.begin(Leak.onKnot()), 0);

  /** Two boats with different equipment: one has the retracting bowsprit, the other has not. */
  @ParameterizedTest
  @ValueSource(strings = {"dunlin", "redshank"})
  void walkedAnswerByAnswerItProposesWhatTheTraceProposes(String boat) throws IOException {
    Workspace workspace = Articles.workspace();
    DiagnosticTree tree = DiagnosticTree.of(begin(workspace, boat), RAREST);
    assertThat(tree.forks()).hasSizeGreaterThan(30);
    for (Fork fork : tree.forks()) {
      Trace fresh = again(begin(workspace, boat), fork);
      assertThat(fork.step()).isEqualTo(fresh.next());
      assertThat(fork.expectedMinutes()).isBetween(fork.step().minutes(), fresh.expectedMinutes());
    }
  }

  /**
   * Dunlin has a bowsprit and a sea toilet; Redshank a portable toilet, and lies in fresh water.
   */
  @Test
  void differsWhereTheBoatsDo() throws IOException {
    Workspace workspace = Articles.workspace();
    List<String> dunlin = steps(DiagnosticTree.of(begin(workspace, "dunlin"), RAREST));
    List<String> redshank = steps(DiagnosticTree.of(begin(workspace, "redshank"), RAREST));
    assertThat(dunlin)
        .contains("taste", "hose-bowsprit", "replace-bowsprit-seal", "toilet-paper-round-hoses")
        .doesNotContain("portable-toilet-floor", "service-portable-toilet");
    assertThat(redshank)
        .contains("portable-toilet-floor", "service-portable-toilet")
        .doesNotContain("taste", "hose-bowsprit", "replace-bowsprit-seal");
    assertThat(dunlin).contains("when", "rebed-deck-fitting");
    assertThat(redshank).contains("when", "rebed-deck-fitting");
  }

  private static List<String> steps(DiagnosticTree tree) {
    return tree.forks().stream().map(fork -> fork.step().id()).distinct().toList();
  }

  private static Trace begin(Workspace workspace, String boat) {
    return Trace.begin(
        Fault.of(
            workspace.library().symptom("water-in-forward-cabin").orElseThrow(),
            new Fitting(workspace.boat(boat).orElseThrow(), A_DAY),
            workspace.library(),
            workspace.cases()));
  }

  private static Trace again(Trace trace, Fork fork) {
    Trace fresh = trace;
    for (TrailEntry entry : fork.at().trail()) {
      if (entry.step() instanceof Answered answered) {
        fresh = fresh.answer(answered.id(), answered.answer());
      } else if (entry.step() instanceof MendFailed) {
        fresh = fresh.mendTried(entry.step().id());
      } else if (entry.step() instanceof TrailStep.MadeSafe) {
        fresh = fresh.madeSafe(entry.step().id());
      } else {
        fresh = fresh.cantTell(entry.step().id());
      }
    }
    return fresh;
  }

  /** The whole little tree, by asking the trace itself at random: every walk is on the tree. */
  @Test
  void holdsEveryWalkOfTheTrace() {
    Random random = new Random(20261125);
    for (int walk = 0; walk < 300; walk++) {
      Trace trace = Trace.begin(Leak.onKnot());
      Fork fork = leak.root();
      boolean going = true;
      while (going) {
        assertThat(fork.step().id()).isEqualTo(trace.next().id());
        List<StepOutcome> outcomes = trace.outcomes(trace.next());
        going = !outcomes.isEmpty();
        if (going) {
          int which = random.nextInt(outcomes.size());
          Branch branch = fork.branches().get(which);
          assertThat(branch.finding()).isEqualTo(outcomes.get(which).finding());
          going = outcomes.get(which).then().isPresent();
          if (going) {
            trace = outcomes.get(which).then().orElseThrow();
            fork = branch.then().orElseThrow();
          }
        }
      }
    }
  }

  @Test
  void branchesHaveChancesThatSumToOne() {
    for (Fork fork : leak.forks()) {
      if (!fork.branches().isEmpty()) {
        assertThat(fork.branches().stream().mapToDouble(Branch::chance).sum())
            .isCloseTo(1, within(EXACT));
      }
    }
  }

  @Test
  void everyCourseEndsMendedOrAtTheYard() {
    double mended = 0;
    double yard = 0;
    for (Fork fork : leak.forks()) {
      if (fork.step() instanceof CallYard) {
        assertThat(fork.branches()).isEmpty();
        yard += fork.chance();
      } else {
        assertThat(fork.branches()).isNotEmpty();
      }
      for (Branch branch : fork.branches()) {
        if (branch.end() == End.MENDED) {
          assertThat(fork.step()).isInstanceOf(DoMend.class);
          mended += fork.chance() * branch.chance();
        }
      }
    }
    assertThat(mended).isPositive();
    assertThat(mended + yard).isCloseTo(1, within(EXACT));
    assertThat(leak.notDrawn()).isZero();
  }

  @Test
  void numbersForksBeforeThoseBehindThem() {
    assertThat(leak.forks().stream().map(Fork::number).toList())
        .isEqualTo(
            IntStream.rangeClosed(1, leak.forks().size()).boxed().collect(Collectors.toList()));
    for (Fork fork : leak.forks()) {
      fork.branches().stream()
          .flatMap(branch -> branch.then().stream())
          .forEach(then -> assertThat(then.number()).isGreaterThan(fork.number()));
    }
  }

  @Test
  void leavesOutWhatIsTooRareAndSaysHowMuch() {
    DiagnosticTree pruned = DiagnosticTree.of(Trace.begin(Leak.onKnot()), 0.05);
    assertThat(pruned.forks().size()).isLessThan(leak.forks().size());
    assertThat(pruned.forks()).allMatch(fork -> fork.chance() >= 0.05);
    assertThat(pruned.notDrawn()).isBetween(0.0001, 0.5);
  }

  @Test
  void knowsWhereATraceStands() {
    Trace trace = Trace.begin(Leak.onKnot());
    assertThat(
            DiagnosticTree.of(trace, 0).where(trace.answer(trace.next().id(), firstAnswer(trace))))
        .get()
        .extracting(Fork::number)
        .isEqualTo(2);
    assertThat(leak.where(trace)).as("the same fault, read again").isPresent();
    assertThat(leak.where(Trace.begin(Leak.on("ruff", List.of())))).as("another boat").isEmpty();
  }

  private static String firstAnswer(Trace trace) {
    return ((Finding.Answer) trace.outcomes(trace.next()).get(0).finding()).answer();
  }
}
