package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.Library;
import org.junit.jupiter.api.Test;

class SessionTest {
  private final Workspace workspace = SmallWorkspace.read();

  private static Session session(Optional<String> chosen) {
    return new Session(SmallWorkspace.clock(), chosen);
  }

  @Test
  void theBoatOfLastTimeIsChosenOnceTheWorkspaceIsThere() {
    Session session = session(Optional.of("stint"));
    assertThat(session.boat()).isEmpty();
    session.replace(workspace);
    assertThat(session.boat().map(boat -> boat.name())).contains("Stint");
  }

  @Test
  void aBoatThatIsNoLongerThereIsNotChosen() {
    Session session = session(Optional.of("gone"));
    session.replace(workspace);
    assertThat(session.boat()).isEmpty();
  }

  @Test
  void theOnlyBoatIsChosenByItself() {
    Session session = session(Optional.empty());
    session.replace(
        new Workspace(
            workspace.library(), List.of(workspace.boats().get(0)), List.of(), List.of()));
    assertThat(session.boat()).contains(workspace.boats().get(0));
  }

  @Test
  void amongSeveralNoneIsChosenByItself() {
    Session session = session(Optional.empty());
    session.replace(workspace);
    assertThat(session.boat()).isEmpty();
  }

  @Test
  void readingAgainKeepsTheBoatAndTakesItsNewParticulars() {
    Session session = session(Optional.of("knot"));
    session.replace(new Workspace(Library.empty(), List.of(), List.of(), List.of()));
    assertThat(session.boat()).isEmpty();
    session.replace(workspace);
    assertThat(session.boat()).contains(workspace.boat("knot").orElseThrow());
    assertThat(session.fitting().orElseThrow().on()).isEqualTo(SmallWorkspace.TODAY);
  }
}
