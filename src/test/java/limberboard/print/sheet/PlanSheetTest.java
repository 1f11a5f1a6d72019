package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanLine;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import limberboard.upkeep.plan.Undone;
import limberboard.upkeep.plan.WorkPlan;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Plans on paper and in a terminal; the PDF is read back with another library. */
class PlanSheetTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 28);

  private static WorkspaceFolders folders;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
  }

  private static WorkPlan plan(String boat, int hours) {
    Upkeep upkeep =
        Upkeep.of(workspace.library(), new Fitting(workspace.boat(boat).orElseThrow(), ON));
    PlanOrder order =
        new PlanOrder(OptionalInt.of(hours * 60), LocalDate.of(2027, 4, 15), List.of(), false);
    return ((PlanAnswer.Made) new Planning(upkeep).answer(order)).plan();
  }

  private static String dense(String text) {
    return text.replaceAll("[\\s\\u00a0\\u00ad-]+", "");
  }

  @TestFactory
  Stream<DynamicTest> everyLineStandsOnPaperLargeEnough() {
    return workspace.boats().stream()
        .map(Boat::id)
        .map(
            boat ->
                DynamicTest.dynamicTest(
                    boat,
                    () -> {
                      WorkPlan plan = plan(boat, 16);
                      PrintedSheets printed =
                          new PrintedSheets(
                              new PlanSheet(workspace.library()).onPaper(plan), folders);
                      assertThat(printed.small()).isEmpty();
                      String all = String.join("", printed.pages(PlanSheetTest::dense));
                      for (PlanLine line : plan.lines().toList()) {
                        assertThat(all).contains(dense(line.line().number() + line.work().title()));
                      }
                      assertThat(printed.pages(PlanSheetTest::dense).get(0))
                          .contains(
                              dense("1" + plan.lines().findFirst().orElseThrow().work().title()));
                    }));
  }

  @Test
  void beginsWithWhatItIsForAndEndsWithTheWholeCautions() {
    CutPage sheet = new PlanSheet(workspace.library()).onPaper(plan("whimbrel", 8));
    List<Part.Role> roles = sheet.parts().stream().map(Part::role).toList();
    assertThat(roles.get(0)).isEqualTo(Part.Role.FACTS);
    assertThat(roles.get(roles.size() - 1)).isEqualTo(Part.Role.CAUTIONS);
    assertThat(roles).contains(Part.Role.WORK, Part.Role.DUE);
    String text = new PlainText().render(sheet, 100).replaceAll("[\\s\u00a0]+", " ");
    assertThat(text)
        .contains("for a practised person; the first time takes half as much again")
        .contains("of the danger of all that is due")
        .contains("there is not enough time");
  }

  private static WorkPlan plan(String boat, LocalDate on, String day) {
    Upkeep upkeep =
        Upkeep.of(workspace.library(), new Fitting(workspace.boat(boat).orElseThrow(), on));
    PlanOrder order = new PlanOrder(OptionalInt.of(30), LocalDate.parse(day), List.of(day), false);
    return ((PlanAnswer.Made) new Planning(upkeep).answer(order)).plan();
  }

  @Test
  void saysAtTheHeadWhatIsNotToBeDoneBeforeWhatStaysUndone() {
    WorkPlan ashore = plan("whimbrel", ON, "2027-04-10");
    assertThat(ashore.forbidding()).isNotEmpty();
    assertThat(ashore.forbidding())
        .allMatch(undone -> undone.work().isGraveMust())
        .isSubsetOf(ashore.mustsUndone());
    assertThat(PlanWords.forbids(ashore))
        .anyMatch(said -> said.startsWith("Do not launch before “"))
        .noneMatch(said -> said.startsWith("Do not leave"))
        .allMatch(said -> said.contains(": left undone it can "));
    CutPage sheet = new PlanSheet(workspace.library()).onPaper(ashore);
    assertThat(sheet.parts().get(1).role()).isEqualTo(Part.Role.NOTICE);
    assertThat(PlanWords.musts(ashore).orElseThrow())
        .matches(".* undone\\. All the musts together take \\d+ h.*; there are 30 min\\.");
    LocalDate july = LocalDate.of(2027, 7, 3);
    assertThat(PlanWords.forbids(plan("whimbrel", july, "2027-07-04")))
        .isNotEmpty()
        .allMatch(said -> said.startsWith("Do not leave the berth before “"));
  }

  @Test
  void whatWaitsSaysForWhat() {
    WorkPlan plan = plan("whimbrel", ON, "2027-04-10");
    assertThat(plan.undone())
        .filteredOn(undone -> undone.reason() == Undone.Reason.WAITS)
        .isNotEmpty()
        .allSatisfy(
            undone -> {
              assertThat(PlanWords.reason(undone)).contains("comes after “" + undone.waitsFor());
              assertThat(plan.undone().stream().map(each -> each.work().title()))
                  .contains(undone.waitsFor());
            });
  }
}
