package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Session;
import limberboard.desktop.drills.DrillChoice.Hidden;
import limberboard.drill.Drill;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Cause;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A trainer chooses what is hidden, or leaves it to the seed. */
class DrillChoiceTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 20);

  private DrillChoice choice;
  private Session session;

  @BeforeEach
  void choose() throws IOException {
    session =
        new Session(
            Clock.fixed(DAY.atStartOfDay().toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
            Optional.empty());
    session.replace(new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read());
    choice = new DrillChoice(session, () -> 7);
    choice.symptom("water-in-forward-cabin");
  }

  private void boat(String id) {
    choice.boat(
        choice.boats().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow());
  }

  @Test
  void onlyWhatTheBoatCanHaveIsOffered() {
    boat("dunlin");
    assertThat(choice.hiding().get(0)).isEqualTo(Hidden.BY_SEED);
    assertThat(choice.hiding()).hasSizeGreaterThan(3);
    assertThat(choice.hiding().stream().skip(1).map(each -> each.cause().orElseThrow()))
        .isSubsetOf(
            choice.page().orElseThrow().details().causes().stream().map(Cause::id).toList());
    boat("tarnwick-26");
    assertThat(choice.hiding()).containsExactly(Hidden.BY_SEED);
  }

  @Test
  void eachCauseThatIsChosenIsTheOneThatIsHidden() {
    boat("dunlin");
    for (Hidden each : choice.hiding().subList(1, choice.hiding().size())) {
      choice.hide(each);
      Drill drill = choice.maker().get();
      assertThat(drill.order().hides()).isPresent();
      assertThat(drill.hiddenCause().id()).isEqualTo(each.cause().orElseThrow());
    }
  }

  @Test
  void anotherSymptomOrAProposalLeavesItToTheSeedAgain() {
    boat("dunlin");
    choice.hide(choice.hiding().get(1));
    choice.symptom("furler-jams");
    assertThat(choice.hidden()).isEqualTo(Hidden.BY_SEED);
    choice.hide(choice.hiding().get(1));
    choice.propose("furler-jams", choice.boat().orElseThrow().id(), "it has come back");
    assertThat(choice.hidden()).isEqualTo(Hidden.BY_SEED);
    assertThat(choice.maker().get().order().hides()).isEmpty();
  }
}
