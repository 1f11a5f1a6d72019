package limberboard.desktop.write.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.typing.PageTyping;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The editor's model on the demo, in step, without a display. */
class SymptomModelTest {
  private static final WorkspaceFolders DEMO = new WorkspaceFolders(Path.of(""));
  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private final List<PageText> changes = new ArrayList<>();
  private LibraryReader reader;
  private SymptomModel model;

  @BeforeEach
  void make() throws IOException {
    reader = new LibraryReader(DEMO);
    reader.read();
    Clock clock =
        Clock.fixed(
            LocalDate.of(2026, 5, 20).atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC);
    Session session = new Session(clock, Optional.of("dunlin"));
    session.replace(new WorkspaceReader(DEMO).read());
    Background direct = new Background(Runnable::run, Runnable::run, new Activity(), new Notices());
    Background later = new Background(waiting::add, Runnable::run, new Activity(), new Notices());
    model =
        new SymptomModel(
            new SymptomTools(session, direct, direct, later, Runnable::run), changes::add);
  }

  private void work() {
    while (!waiting.isEmpty()) {
      waiting.poll().run();
    }
  }

  private SymptomReading reading(String id) {
    return new PageTyping(reader.typing("articles/symptoms/" + id + ".md", Kind.SYMPTOM))::read;
  }

  private void show(String id, String text) {
    model.show(id, new PageText(text), reading(id));
  }

  @Test
  void aPageOfTheDemoHasATreeAndNothingToMend() throws IOException {
    show("clutch-slips", Files.readString(Path.of("articles/symptoms/clutch-slips.md")));
    assertThat(model.isWorking()).isTrue();
    work();
    assertThat(model.isWorking()).isFalse();
    assertThat(model.fault()).isPresent();
    assertThat(model.tried()).hasSize(model.table().orElseThrow().causes().size());
    assertThat(model.findings()).noneMatch(each -> each.rank() == SymptomFinding.Rank.WRONG);
  }

  @Test
  void whatIsTypedIsHandedOnAndTakenBack() throws IOException {
    String text = Files.readString(Path.of("articles/symptoms/clutch-slips.md"));
    show("clutch-slips", text);
    assertThat(model.edit(edits -> edits.typed(new TableCell.Weight(0), "9"))).isTrue();
    assertThat(changes).hasSize(1);
    assertThat(changes.get(0).text()).isEqualTo(text.replaceFirst("weight: 6", "weight: 9"));
    assertThat(model.edit(edits -> edits.typed(new TableCell.Weight(0), "much"))).isFalse();
    assertThat(model.said()).contains("greater than 0");
    model.undo();
    assertThat(changes.get(1).text()).isEqualTo(text);
  }

  @Test
  void onlyTheNewestPlansCount() throws IOException {
    show("clutch-slips", Files.readString(Path.of("articles/symptoms/clutch-slips.md")));
    int causes = model.table().orElseThrow().causes().size();
    model.edit(edits -> edits.cleared(new TableCell.CauseTitle(causes - 1)));
    model.edit(edits -> edits.cleared(new TableCell.CauseTitle(causes - 2)));
    assertThat(waiting).hasSize(3);
    work();
    assertThat(model.tried()).hasSize(causes - 2);
  }

  @Test
  void aBrokenHeaderIsSaidAndNothingIsWritten() {
    show("new", "---\ntitle: [\n---\n");
    assertThat(model.table()).isEmpty();
    assertThat(model.edit(edits -> edits.typed(new TableCell.NewCause(), "Rain"))).isFalse();
    assertThat(changes).isEmpty();
    assertThat(model.fault()).isEmpty();
    assertThat(model.isWorking()).isFalse();
  }

  @Test
  void causesThatNobodyCanTellApartAndCausesWithoutAMendAreFound() {
    show(
        "new",
        """
        ---
        title: Wet
        zones: [forward-cabin]
        causes:
          - {id: seal, title: The seal, weight: 1, mend: replace-bowsprit-seal}
          - {id: hatch, title: The hatch, weight: 1, mend: replace-forehatch-gasket}
        checks:
          - {id: c, ask: Wet, how: Look., minutes: 1, answers: [x, y], finds: {x: {others: often}}}
        ---
        """);
    work();
    assertThat(model.findings())
        .anySatisfy(
            each -> {
              assertThat(each.wrong()).contains("No check tells \u201cThe seal\u201d from");
              assertThat(each.cell()).contains(new TableCell.CauseTitle(0));
            })
        .anyMatch(each -> each.rank() == SymptomFinding.Rank.PLAN);
    model.edit(edits -> edits.cleared(new TableCell.Mend(1)));
    work();
    assertThat(model.findings())
        .anyMatch(each -> each.cell().equals(Optional.of(new TableCell.Mend(1))));
    assertThat(model.fault()).isPresent();
    assertThat(model.treeNote()).contains("without a page to mend it");
  }

  @Test
  void anOutlineIsKeptInThePageUntilItsTableIsMade() {
    show("new", "---\ntitle: Wet\n---\n");
    assertThat(model.isOutlining()).isTrue();
    model.outline("Causes\nRain comes in\nChecks\nIs it wet? yes, no");
    assertThat(changes.get(0).text()).contains("Rain comes in");
    assertThat(model.makeTable()).isTrue();
    assertThat(model.isOutlining()).isFalse();
    assertThat(model.table().orElseThrow().checks().get(0).answers()).containsExactly("yes", "no");
  }

  @Test
  void whatIsFilledInIsFoundInItsCell() throws IOException {
    show("clutch-slips", Files.readString(Path.of("articles/symptoms/clutch-slips.md")));
    CellWords words = new CellWords(model.table().orElseThrow());
    TableGrid grid = new TableGrid(model.table().orElseThrow());
    int said = 0;
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        TableCell cell = grid.at(row, column);
        assertThat(words.shown(cell)).isNotNull();
        if (cell instanceof TableCell.Word word && words.isSaid(word)) {
          assertThat(words.chance(word)).isPresent();
          String typed = words.edited(word);
          assertThat(model.edit(edits -> edits.typed(word, typed))).isTrue();
          said++;
        }
      }
    }
    assertThat(said).isGreaterThan(20);
    assertThat(changes).isEmpty();
  }
}
