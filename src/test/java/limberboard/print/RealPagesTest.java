package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Condition;
import limberboard.library.value.Skill;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.StrictXml;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.print.xhtml.Xhtml;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The demo's own pages, for each of its boats and for none. */
@ContentTest
class RealPagesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

  private static WorkspaceFolders folders;
  private static Workspace workspace;

  @BeforeAll
  static void readWorkspace() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
  }

  @TestFactory
  Stream<DynamicTest> everyPageRendersForEveryBoat() {
    Xhtml xhtml = new Xhtml(Pictures.in(folders));
    return workspace.library().pages().stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    page.id(),
                    () -> {
                      for (CutPage cut : cuts(page)) {
                        assertThat(
                                StrictXml.parse(xhtml.render(cut, Look.LIGHT))
                                    .getElementsByTagName("h1")
                                    .item(0)
                                    .getTextContent())
                            .isEqualTo(page.title());
                        assertThat(new PlainText().render(cut, 80).lines())
                            .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> noCutRemovesACautionThatAProcedureNames() {
    return workspace.library().all(Procedure.class).stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    page.id(),
                    () -> {
                      for (CutPage cut : cuts(page)) {
                        assertThat(cut.cautions())
                            .extracting(Block.CautionBox::id)
                            .containsAll(CautionUse.ids(always(page)));
                      }
                    }));
  }

  /** What the page names for every boat; the rest is held by the test of every output. */
  private static List<CautionUse> always(Page<Procedure> page) {
    return page.details().cautions().stream()
        .filter(named -> named.fits().equals(Condition.ALWAYS))
        .toList();
  }

  @Test
  void licensedProceduresPrintNoStepsOutsideTheOwnersPart() {
    List<Page<Procedure>> licensed =
        workspace.library().all(Procedure.class).stream()
            .filter(page -> page.details().skill() == Skill.LICENSED)
            .toList();
    assertThat(licensed).isNotEmpty();
    for (Page<Procedure> page : licensed) {
      String others =
          Arrays.stream(page.body().split("(?m)^(?=## )"))
              .filter(section -> !isOwners(section, page.details().ownerParts()))
              .collect(Collectors.joining());
      for (CutPage cut : cuts(page)) {
        String text = new PlainText().render(cut, 4000);
        assertThat(others.lines().filter(line -> line.matches("\\d+\\. .*")))
            .as(page.id())
            .isNotEmpty()
            .allSatisfy(
                step -> assertThat(text).doesNotContain(step.replaceFirst("^\\d+\\. ", "")));
      }
    }
  }

  private static boolean isOwners(String section, List<String> ownerParts) {
    return ownerParts.stream().anyMatch(heading -> section.startsWith("## " + heading + "\n"));
  }

  /** Anodes differ by drive, so that this page must differ between a saildrive and a shaft boat. */
  @Test
  void renewingTheAnodesDiffersBetweenTwoBoatsAndItsCautionsDoNot() {
    Page<?> page = workspace.library().page("renew-anodes").orElseThrow();
    CutPage dunlins = cut(page, workspace.boat("dunlin").orElseThrow());
    CutPage sanderlings = cut(page, workspace.boat("sanderling").orElseThrow());
    assertThat(dunlins.cautions()).isNotEmpty().isEqualTo(sanderlings.cautions());
    assertThat(dunlins.part(Part.Role.BODY)).isNotEqualTo(sanderlings.part(Part.Role.BODY));
    assertThat(dunlins.part(Part.Role.MATERIALS))
        .isNotEqualTo(sanderlings.part(Part.Role.MATERIALS));
    assertThat(dunlins.part(Part.Role.ACCESS)).isNotEqualTo(sanderlings.part(Part.Role.ACCESS));
    assertThat(new PlainText().render(dunlins, 80))
        .contains("Dunlin has no shaft")
        .doesNotContain("Clamp the two halves round");
    assertThat(new PlainText().render(sanderlings, 80))
        .contains("Sanderling has no saildrive", "Clamp the two halves round");
  }

  private static List<CutPage> cuts(Page<?> page) {
    List<CutPage> cuts = new ArrayList<>();
    cuts.add(new PageCutter(workspace.library()).cut(page, Optional.empty()));
    workspace.boats().forEach(boat -> cuts.add(cut(page, boat)));
    return cuts;
  }

  private static CutPage cut(Page<?> page, Boat boat) {
    return new PageCutter(workspace.library()).cut(page, Optional.of(new Fitting(boat, DAY)));
  }
}
