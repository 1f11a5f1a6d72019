package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.CallYard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TreeCutTest {
  private static final double EXACT = 1e-9;

  private final DiagnosticTree leak = DiagnosticTree.of(Trace.begin(Leak.onKnot()), 0);

  private TreeCut best(int most) {
    return TreeCut.bestFirst(leak, fork -> 1, cut -> cut.kept().size() <= most);
  }

  @Test
  void aTreeThatFitsIsKeptWholeAndCoversEverything() {
    TreeCut all = best(Integer.MAX_VALUE);
    assertThat(all.whole().forks()).isEqualTo(leak.forks());
    assertThat(all.share()).isCloseTo(1, within(1e-6));
  }

  @Test
  void whatHasNoRoomIsLeftOutButNeverTheRoot() {
    assertThat(best(0).kept()).containsExactly(1);
    assertThat(TreeCut.root(leak).forks()).containsExactly(leak.root());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 8})
  void withEachForkTheOneThatLeadsToItAndTheShareIsThatOfTheEndsReached(int most) {
    TreeCut cut = best(most);
    Set<Integer> reached = new HashSet<>();
    double share = walked(cut, leak.root(), 1, reached);
    assertThat(cut.kept())
        .hasSizeLessThanOrEqualTo(most)
        .containsExactlyInAnyOrderElementsOf(reached);
    assertThat(cut.share()).isCloseTo(share, within(EXACT));
    assertThat(cut.share()).isGreaterThanOrEqualTo(best(most - 1).share() - EXACT);
  }

  /** Goes by the cut from the root, multiplying the chances of the answers on the way. */
  private static double walked(TreeCut cut, Fork at, double chance, Set<Integer> reached) {
    reached.add(at.number());
    if (at.step() instanceof CallYard) {
      return chance;
    }
    double share = 0;
    for (Branch branch : at.branches()) {
      double here = chance * branch.chance();
      if (branch.end() == End.MENDED) {
        share += here;
      } else if (branch.then().filter(cut::keeps).isPresent()) {
        share += walked(cut, branch.then().orElseThrow(), here, reached);
      }
    }
    return share;
  }

  @Test
  void levelsKeepEveryStepThatCanBeReachedByFewerAnswersAndNoOther() {
    assertThat(leak.depth()).isGreaterThan(2);
    for (int levels = 1; levels <= leak.depth() + 1; levels++) {
      int most = levels;
      TreeCut cut = TreeCut.levels(leak, levels);
      assertThat(cut.forks())
          .containsExactlyElementsOf(
              leak.forks().stream().filter(fork -> fork.at().trail().size() < most).toList());
      assertThat(cut.isWhole()).isEqualTo(levels >= leak.depth());
      assertThat(cut.ends())
          .containsExactlyInAnyOrderElementsOf(
              leak.forks().stream().filter(fork -> fork.at().trail().size() == most).toList());
    }
    assertThat(TreeCut.all(leak).forks()).isEqualTo(leak.forks());
    assertThat(TreeCut.all(leak).ends()).isEmpty();
  }

  @Test
  void theCautionsAreThoseOfTheStepsKept() {
    TreeCut cut = best(3);
    assertThat(cut.cautions()).containsAll(leak.from().fault().first());
    for (Fork fork : cut.forks()) {
      assertThat(cut.cautions())
          .extracting(caution -> caution.id())
          .containsAll(fork.step().cautions().stream().map(caution -> caution.id()).toList());
    }
    assertThat(leak.cautions().size()).isGreaterThanOrEqualTo(cut.cautions().size());
  }
}
