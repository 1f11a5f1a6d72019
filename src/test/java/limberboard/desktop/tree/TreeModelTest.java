package limberboard.desktop.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import limberboard.desktop.support.Steps;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import org.junit.jupiter.api.Test;

class TreeModelTest {
  private final Steps steps = new Steps();
  private final TreeModel model = new TreeModel(steps.background());
  private final Trace begin = SmallTrees.begin();

  private Trace alongTheTree() {
    String check = begin.next().id();
    return begin.answer(
        check, begin.outcomes(begin.next()).get(0).finding().words().replace(' ', '-'));
  }

  /** An answer to another check than the tree asks first. */
  private Trace anotherWay() {
    String other = begin.next().id().equals("clip") ? "when" : "clip";
    return begin.cantTell(other);
  }

  @Test
  void nothingIsWorkedOutUntilSomebodyLooks() {
    model.follow(Optional.of(begin));
    assertThat(steps.waiting()).isZero();
    assertThat(model.isGrowing()).isFalse();
    model.want(true);
    assertThat(steps.waiting()).isEqualTo(1);
    assertThat(model.isGrowing()).isTrue();
    assertThat(model.walk()).isEmpty();
    steps.all();
    assertThat(model.isGrowing()).isFalse();
    assertThat(model.walk().orElseThrow().tree().from()).isEqualTo(begin);
  }

  @Test
  void growsFromTheBeginningAndMarksWhereTheTraceStands() {
    model.follow(Optional.of(alongTheTree()));
    model.want(true);
    steps.all();
    TreeWalk walk = model.walk().orElseThrow();
    assertThat(walk.tree().from()).isEqualTo(begin);
    assertThat(walk.here().orElseThrow().at()).isEqualTo(alongTheTree());
    assertThat(model.isFromHere()).isFalse();
    assertThat(model.wentAnotherWay()).isFalse();
    model.follow(Optional.of(begin));
    assertThat(walk.here().orElseThrow()).isSameAs(walk.tree().root());
    assertThat(steps.waiting()).isZero();
  }

  @Test
  void whenTheOwnerWentAnotherWayASecondTreeGrowsFromThereAndTheFirstCanBeSeen() {
    model.follow(Optional.of(anotherWay()));
    model.want(true);
    steps.all();
    assertThat(model.wentAnotherWay()).isTrue();
    assertThat(model.isFromHere()).isTrue();
    assertThat(model.walk().orElseThrow().tree().from()).isEqualTo(anotherWay());
    model.showFromBeginning();
    assertThat(model.isFromHere()).isFalse();
    assertThat(model.walk().orElseThrow().here()).isEmpty();
    model.showFromHere();
    assertThat(model.isFromHere()).isTrue();
    assertThat(steps.waiting()).isZero();
  }

  @Test
  void aTreeThatIsNoLongerWantedIsStoppedAndDropped() {
    model.follow(Optional.of(begin));
    model.want(true);
    model.stop();
    assertThat(model.isGrowing()).isFalse();
    steps.all();
    assertThat(model.walk()).isEmpty();
    model.tryAgain();
    steps.all();
    assertThat(model.walk()).isPresent();
  }

  @Test
  void aTreeOfAnotherFaultThatComesLateIsDropped() {
    model.follow(Optional.of(begin));
    model.want(true);
    Trace other = SmallTrees.begin("stint");
    model.follow(Optional.of(other));
    assertThat(steps.waiting()).isEqualTo(2);
    steps.last();
    TreeWalk right = model.walk().orElseThrow();
    steps.all();
    assertThat(model.walk()).containsSame(right);
    assertThat(right.tree().from().fault()).isSameAs(other.fault());
  }

  @Test
  void lookingAwayStopsWhatGrows() {
    model.follow(Optional.of(begin));
    model.want(true);
    model.want(false);
    assertThat(model.isGrowing()).isFalse();
    steps.all();
    assertThat(model.walk()).isEmpty();
    model.want(true);
    steps.all();
    TreeWalk walk = model.walk().orElseThrow();
    model.want(false);
    model.want(true);
    assertThat(model.walk()).containsSame(walk);
    assertThat(steps.waiting()).isZero();
  }

  @Test
  void theSameFaultReadAgainLeavesTheTree() {
    model.follow(Optional.of(begin));
    model.want(true);
    steps.all();
    TreeWalk walk = model.walk().orElseThrow();
    model.follow(Optional.of(SmallTrees.begin()));
    assertThat(steps.waiting()).isZero();
    assertThat(model.walk()).containsSame(walk);
  }

  @Test
  void asManyLevelsAsAreChosenAreShownAndPrintedUntilAnotherFault() {
    assertThat(model.cut()).isEmpty();
    model.follow(Optional.of(begin));
    model.want(true);
    steps.all();
    TreeWalk walk = model.walk().orElseThrow();
    assertThat(model.cut().orElseThrow().isWhole()).isTrue();
    model.chooseLevels(OptionalInt.of(2));
    TreeCut cut = model.cut().orElseThrow();
    assertThat(cut).isEqualTo(TreeCut.levels(walk.tree(), 2));
    assertThat(walk.visible()).containsAll(cut.forks()).containsAll(cut.ends());
    assertThat(walk.visible()).hasSize(cut.forks().size() + cut.ends().size());
    model.follow(Optional.of(SmallTrees.begin()));
    assertThat(model.levels()).hasValue(2);
    model.chooseLevels(OptionalInt.empty());
    assertThat(walk.visible()).isEqualTo(walk.tree().forks());
    assertThat(model.cut().orElseThrow().isWhole()).isTrue();
    model.chooseLevels(OptionalInt.of(1));
    model.follow(Optional.of(SmallTrees.begin("stint")));
    assertThat(model.levels()).isEmpty();
  }
}
