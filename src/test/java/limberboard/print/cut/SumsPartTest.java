package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Skill;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.print.xhtml.Xhtml;
import limberboard.workings.sums.SumUseCheck;
import limberboard.workings.sums.Sums;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Sums on the pages of the demo workspace. */
class SumsPartTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace =
        new WorkspaceReader(
                new WorkspaceFolders(Path.of("")), List.of(new SumUseCheck(Sums.ofTheTrade())))
            .read();
  }

  @Test
  void atLeastTwelvePagesShowSumsAndNothingIsWrongWithThem() {
    assertThat(workspace.problems()).isEmpty();
    assertThat(workspace.library().pages())
        .filteredOn(page -> !page.details().workings().isEmpty())
        .hasSizeGreaterThanOrEqualTo(12);
  }

  @Test
  void everySumOfThePagesIsReckonedOnEveryBoat() {
    for (Page<?> page : workspace.library().pages()) {
      if (!page.details().workings().isEmpty()) {
        workspace.boats().forEach(boat -> assertReckoned(page, Optional.of(boat.id())));
        assertReckoned(page, Optional.empty());
      }
    }
  }

  private static void assertReckoned(Page<?> page, Optional<String> boat) {
    assertThat(text(page.id(), boat)).as(page.id()).doesNotContain("Cannot be worked out");
  }

  /** Redshank lies in fresh water, Dunlin in the sea. */
  @Test
  void takesTheWaterFromTheBoat() {
    assertThat(text("galvanic-corrosion", Optional.of("redshank"))).contains("Alloy: magnesium");
    assertThat(text("galvanic-corrosion", Optional.of("dunlin"))).contains("Alloy: aluminium");
  }

  /** The Tarnwick 30 has 13 m of wire in the mast, and the run is 1.4 times that. */
  @Test
  void takesMeasuresFromTheModel() {
    assertThat(text("replace-mast-cable", Optional.of("dunlin"))).contains("18.2 m");
    assertThat(text("replace-mast-cable", Optional.empty())).contains("depends on the boat");
  }

  @Test
  void saysFormulaWorkingAndSourceInEveryOutput() {
    CutPage cut = cut("stainless-screws-a4", Optional.of("dunlin"));
    String text = new PlainText().render(cut, 100);
    String html = new Xhtml(Pictures.none()).render(cut, Look.LIGHT);
    for (String output : List.of(text, html)) {
      assertThat(output).contains("Workings", "Formula", "Working", "Source", "5.54 Nm");
    }
  }

  @Test
  void leavesOutWhatDoesNotFitAndSaysSo() {
    String text = text("renew-anodes", Optional.of("dunlin"));
    assertThat(text).contains("Anodes of a bare shaft and its propeller: Dunlin has no shaft");
  }

  @Test
  void cautionsStayFirst() {
    assertThat(cut("renew-anodes", Optional.of("dunlin")).parts().get(0).role())
        .isEqualTo(Part.Role.CAUTIONS);
  }

  @Test
  void licensedWorkShowsNone() {
    for (Page<Procedure> page : workspace.library().all(Procedure.class)) {
      if (page.details().skill() == Skill.LICENSED) {
        assertThat(cut(page.id(), Optional.empty()).part(Part.Role.WORKINGS)).isEmpty();
      }
    }
  }

  private static String text(String id, Optional<String> boat) {
    return new PlainText().render(cut(id, boat), 2000);
  }

  private static CutPage cut(String id, Optional<String> boat) {
    Optional<Fitting> fitting =
        boat.map(name -> new Fitting(workspace.boat(name).orElseThrow(), DAY));
    return new PageCutter(workspace.library())
        .cut(workspace.library().page(id).orElseThrow(), fitting);
  }
}
