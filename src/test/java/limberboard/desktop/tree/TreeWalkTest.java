package limberboard.desktop.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;

class TreeWalkTest {
  private final DiagnosticTree tree = SmallTrees.wetLocker();
  private final TreeWalk walk = new TreeWalk(tree);

  private Fork root() {
    return tree.root();
  }

  private Fork child(int number) {
    return root().branches().stream().flatMap(b -> b.then().stream()).toList().get(number);
  }

  /** The first answer that leads on to a fork with branches. */
  private Trace afterOneAnswer() {
    return child(0).at();
  }

  @Test
  void beginsAtTheRootWithTheFirstLevelsOpen() {
    assertThat(walk.selected()).isSameAs(root());
    assertThat(walk.isOpen(root())).isTrue();
    assertThat(walk.visible()).contains(child(0));
    assertThat(walk.here()).isEmpty();
  }

  @Test
  void aWideTreeIsOpenForOneLevelOnlyAndANarrowOneForThree() {
    TreeWalk wide = new TreeWalk(SmallTrees.regular(5, 6));
    assertThat(wide.visible()).hasSize(7);
    TreeWalk narrow = new TreeWalk(SmallTrees.regular(5, 2));
    assertThat(narrow.visible()).hasSize(15);
  }

  @Test
  void rightUnfoldsAndThenGoesOnAndLeftFoldsAndThenGoesBack() {
    walk.select(child(0));
    boolean open = walk.isOpen(child(0));
    if (open) {
      walk.left();
    }
    assertThat(walk.isOpen(child(0))).isFalse();
    int hidden = walk.visible().size();
    walk.right();
    assertThat(walk.isOpen(child(0))).isTrue();
    assertThat(walk.selected()).isSameAs(child(0));
    assertThat(walk.visible().size()).isGreaterThan(hidden);
    walk.right();
    assertThat(walk.selected().at().trail()).hasSize(2);
    walk.select(child(0));
    walk.left();
    walk.left();
    assertThat(walk.selected()).isSameAs(root());
  }

  @Test
  void upAndDownGoToNeighboursOfTheSameLevelAndStayInsideIt() {
    walk.select(child(0));
    walk.sideways(-1);
    assertThat(walk.selected()).isSameAs(child(0));
    walk.sideways(1);
    assertThat(walk.selected()).isSameAs(child(1));
    walk.sideways(-1);
    assertThat(walk.selected()).isSameAs(child(0));
  }

  @Test
  void foldingAwayWhatIsSelectedSelectsWhatIsFolded() {
    walk.unfoldAll();
    Fork last = tree.forks().get(tree.forks().size() - 1);
    walk.select(last);
    walk.toggle(root());
    assertThat(walk.selected()).isSameAs(root());
    assertThat(walk.visible()).containsExactly(root());
  }

  @Test
  void unfoldingEverythingShowsEveryForkAndFoldingAgainFew() {
    int first = walk.visible().size();
    walk.unfoldAll();
    assertThat(walk.visible()).hasSize(tree.forks().size());
    walk.foldAgain();
    assertThat(walk.visible()).hasSize(first);
  }

  @Test
  void whereTheTraceStandsIsMarkedWithTheWayThereAndWhatComesNext() {
    Optional<Fork> here = tree.where(afterOneAnswer());
    walk.mark(here);
    assertThat(walk.here()).contains(child(0));
    assertThat(walk.selected()).isSameAs(child(0));
    assertThat(walk.isOnTheWay(root())).isTrue();
    assertThat(walk.isOnTheWay(child(0))).isTrue();
    assertThat(walk.isOnTheWay(child(1))).isFalse();
    assertThat(walk.isOpen(child(0))).isTrue();
    walk.toRoot();
    assertThat(walk.selected()).isSameAs(root());
    walk.toHere();
    assertThat(walk.selected()).isSameAs(child(0));
  }

  @Test
  void theWayToADeepForkIsUnfoldedWhenItIsSelected() {
    Fork deepest =
        tree.forks().stream()
            .max(java.util.Comparator.comparingInt(fork -> fork.at().trail().size()))
            .orElseThrow();
    walk.select(deepest);
    assertThat(walk.visible()).contains(deepest);
  }

  @Test
  void countsWhatLiesBehind() {
    assertThat(walk.behind(root())).isEqualTo(tree.forks().size() - 1);
    List<Fork> yards =
        tree.forks().stream().filter(fork -> fork.step() instanceof NextStep.CallYard).toList();
    assertThat(yards).isNotEmpty().allMatch(fork -> walk.behind(fork) == 0);
    assertThat(yards).noneMatch(walk::canFold);
  }

  @Test
  void everyForkIsTheStepThatTheTraceProposesThere() {
    assertThat(tree.forks()).allMatch(fork -> fork.step().equals(fork.at().next()));
  }
}
