package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.tree.TreeModel;
import limberboard.desktop.tree.TreeWalk;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AspectsTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final TraceModel trace = new TraceModel(session, Steps.atOnce());
  private final Aspects aspects =
      new Aspects(trace, new TreeModel(Steps.atOnce()), new WhyModel(Steps.atOnce()));

  @BeforeEach
  void begin() {
    session.replace(SmallWorkspace.read());
    trace.start("wet-locker");
    trace.cautionsRead();
  }

  @Test
  void beginsWithTheNextStepAndWorksNothingElseOut() {
    assertThat(aspects.now()).isEqualTo(Aspect.STEP);
    assertThat(aspects.tree().walk()).isEmpty();
    assertThat(aspects.why().options()).isEmpty();
  }

  @Test
  void theTreeStaysWhileAnswersChangeAndMarksWhereTheTraceStands() {
    aspects.look(Aspect.TREE);
    assertThat(aspects.tree().walk().orElseThrow().here().orElseThrow().number()).isEqualTo(1);
    String check = trace.step().orElseThrow().id();
    trace.answer(check, check.equals("when") ? "after-washing" : "firm");
    assertThat(aspects.now()).isEqualTo(Aspect.TREE);
    assertThat(aspects.tree().walk().orElseThrow().here().orElseThrow().at())
        .isEqualTo(trace.trace().orElseThrow());
    trace.startAgain();
    assertThat(aspects.tree().walk().orElseThrow().here().orElseThrow().number()).isEqualTo(1);
  }

  @Test
  void walkingTheTreeChangesNothingOfTheTrace() {
    aspects.look(Aspect.TREE);
    var before = trace.trace();
    aspects.tree().walk().orElseThrow().right();
    aspects.tree().walk().orElseThrow().right();
    aspects.tree().walk().orElseThrow().sideways(1);
    assertThat(trace.trace()).isEqualTo(before);
  }

  @Test
  void reasonsAreThoseOfOneStepAndGoWithIt() {
    aspects.look(Aspect.WHY);
    assertThat(aspects.why().proposed()).isEqualTo(trace.step());
    assertThat(aspects.why().effects()).isNotEmpty();
    trace.cantTell(trace.step().orElseThrow().id());
    assertThat(aspects.now()).isEqualTo(Aspect.STEP);
    assertThat(aspects.why().options()).isEmpty();
  }

  @Test
  void anotherFaultBeginsWithItsNextStep() {
    aspects.look(Aspect.TREE);
    trace.leave();
    assertThat(aspects.now()).isEqualTo(Aspect.STEP);
    trace.start("gas-smell");
    trace.cautionsRead();
    aspects.look(Aspect.TREE);
    assertThat(aspects.tree().walk().orElseThrow().tree().from().fault().page().id())
        .isEqualTo("gas-smell");
  }

  @Test
  void aMendedFaultNeedsNoReasons() {
    aspects.look(Aspect.WHY);
    trace.itIsMended(Optional.empty());
    assertThat(aspects.now()).isEqualTo(Aspect.STEP);
    aspects.look(Aspect.WHY);
    assertThat(aspects.now()).isEqualTo(Aspect.STEP);
  }

  @Test
  void readingTheFilesAgainLeavesWhatIsLookedAt(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    Path page = folders.articles().resolve("symptoms/wet-locker.md");
    aspects.look(Aspect.TREE);
    TreeWalk walk = aspects.tree().walk().orElseThrow();
    walk.unfoldAll();
    walk.right();
    int unfolded = walk.visible().size();
    int selected = walk.selected().number();
    Files.writeString(page, Files.readString(page).replace("It has gone flat", "It is flat"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(aspects.now()).isEqualTo(Aspect.TREE);
    TreeWalk after = aspects.tree().walk().orElseThrow();
    assertThat(after).as("drawn anew").isNotSameAs(walk);
    assertThat(after.visible()).hasSize(unfolded);
    assertThat(after.selected().number()).isEqualTo(selected);
    aspects.look(Aspect.WHY);
    Files.writeString(page, Files.readString(page).replace("It is flat", "It has gone flat"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(aspects.now()).isEqualTo(Aspect.WHY);
    assertThat(aspects.why().trace()).isEqualTo(trace.trace());
    assertThat(aspects.why().effects()).isNotEmpty();
  }

  @Test
  void aWrittenLogLeavesTheTreeItself(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    aspects.look(Aspect.TREE);
    TreeWalk walk = aspects.tree().walk().orElseThrow();
    Path log = folders.boats().resolve("knot/log.csv");
    Files.writeString(log, Files.readString(log) + "2026-05-19,event,,,,,washed down\n");
    session.replace(SmallWorkspace.read(folders));
    assertThat(aspects.now()).isEqualTo(Aspect.TREE);
    assertThat(aspects.tree().walk().orElseThrow()).isSameAs(walk);
  }
}
