package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Stock;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.plan.PlanAnswer;
import limberboard.upkeep.plan.PlanJobs;
import limberboard.upkeep.plan.PlanOrder;
import limberboard.upkeep.plan.Planning;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.Job;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What to get for the plan of a boat that was bought, of which little is known. */
class PlanShoppingTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 29);
  private static final String LOOK = "Look or ask first: it may not be needed";
  private static Workspace workspace;
  private static Upkeep upkeep;
  private static WorkPlan plan;
  private static ShoppingList list;

  @BeforeAll
  static void planForABoughtBoat() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    Boat bought = workspace.boat("whimbrel").orElseThrow().bought(LocalDate.of(2026, 9, 12));
    Fitting fitting = new Fitting(bought.with(List.of()), ON);
    upkeep = Upkeep.of(workspace.library(), fitting);
    PlanOrder order =
        new PlanOrder(OptionalInt.of(16 * 60), LocalDate.of(2027, 4, 15), List.of(), false);
    plan = ((PlanAnswer.Made) new Planning(upkeep).answer(order)).plan();
    list = ShoppingList.of(PlanJobs.of(plan), fitting, Stock.NONE, workspace.library());
  }

  private static CutPage sheet() {
    return new ShoppingSheet(workspace.library()).onPaper(list, ShoppingFor.plan(plan, list));
  }

  private static String said(Part part) {
    CutPage page = sheet();
    CutPage only =
        new CutPage(
            page.id(),
            page.kind(),
            page.label(),
            page.title(),
            page.summary(),
            page.cutFor(),
            List.of(part));
    return new PlainText().render(only, 10_000);
  }

  @Test
  void namesThePlanItsDaysAndItsLines() {
    String top = (sheet().title() + " " + sheet().summary()).replace('\u00a0', ' ');
    assertThat(top)
        .contains("Shopping for the plan until 15 Apr 2027")
        .contains("What to get for " + plan.lines().count() + " pieces of work on ")
        .contains("by the plan of 29 Nov 2026");
  }

  @Test
  void whatALookMaySpareStandsByItselfAndNothingIsLost() {
    assertThat(list.toGetAfterLook()).isNotEmpty().allMatch(ShoppingLine::isLookFirst);
    assertThat(list.toGetAnyway()).isNotEmpty().noneMatch(ShoppingLine::isLookFirst);
    assertThat(list.toGetAfterLook().size() + list.toGetAnyway().size())
        .isEqualTo(list.toGet().size());
    Part get = part("To get");
    Part look = part(LOOK);
    list.toGetAnyway()
        .forEach(line -> assertThat(said(get)).contains("□ " + line.material().title()));
    list.toGetAfterLook()
        .forEach(line -> assertThat(said(look)).contains("□ " + line.material().title()));
    assertThat(said(look)).contains("Nobody knows when this work was last done");
  }

  private static Part part(String heading) {
    return sheet().parts().stream()
        .filter(part -> part.title().equals(heading))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void onlyWorkThatNobodyKnowsOfAndThatIsNoLookMayBeSpared() {
    List<String> spared =
        upkeep.all().stream().filter(Due::isLookFirst).map(due -> due.work().id()).toList();
    List<Job> jobs = PlanJobs.of(plan);
    assertThat(jobs.stream().filter(Job::lookFirst)).isNotEmpty();
    assertThat(jobs).allMatch(job -> job.lookFirst() == spared.contains(job.id()));
    assertThat(
            SeasonJobs.of(upkeep, Optional.of(2027)).stream().filter(Job::lookFirst).map(Job::id))
        .isNotEmpty()
        .isSubsetOf(spared);
  }

  @Test
  void aTableSaysItAtTheUse() {
    assertThat(new ShoppingCsv().render(list)).contains("look or ask first: it may not be needed");
  }
}
