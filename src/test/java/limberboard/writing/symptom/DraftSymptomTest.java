package limberboard.writing.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.review.TriedCause;
import limberboard.writing.PageText;
import limberboard.writing.typing.PageTyping;
import org.junit.jupiter.api.Test;

/** What is not finished can be traced meanwhile, and an outline becomes a table. */
class DraftSymptomTest {
  private static final String LINES =
      """
      Causes
      The seal is worn
      Rain comes in at the hatch
      Checks
      Does it taste of salt? salt, fresh
      """;

  private static SymptomTable outlined() throws Unchangeable {
    PageText page = new PageText("---\ntitle: Wet\nsystem: # hull, deck\nzones: []\n---\n");
    OutlinedPage typed = new OutlinedPage(new OutlinedPage(page).typed(LINES));
    assertThat(typed.outline().causes()).hasSize(2);
    assertThat(OutlinedPage.isOutline(typed.page())).isTrue();
    assertThat(OutlinedPage.isOutline(page)).isFalse();
    return (SymptomTable) SymptomTable.read(typed.table());
  }

  @Test
  void anOutlineBecomesTheTableAndLeavesTheBody() throws Unchangeable {
    SymptomTable table = outlined();
    assertThat(table.causes()).extracting(TableCause::title).contains("Rain comes in at the hatch");
    assertThat(table.checks().get(0).answers()).containsExactly("salt", "fresh");
    assertThat(table.page().text()).contains("system: # hull, deck\n").doesNotContain("Causes");
    assertThat(table.page().body().of(table.page().text())).isBlank();
  }

  @Test
  void whatIsMissingIsFilledUpAndSaid() throws Unchangeable, IOException {
    DraftSymptom draft = DraftSymptom.of(outlined()).orElseThrow();
    assertThat(draft.taken())
        .containsExactly(
            "2 causes without a page to mend it: the yard mends it here",
            "1 check without minutes: taken as 5");
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    LibraryReader reader = new LibraryReader(folders);
    reader.read();
    PageTyping typing = new PageTyping(reader.typing("articles/symptoms/wet.md", Kind.SYMPTOM));
    PageTyping.Read read = typing.read(draft.page());
    Page<Symptom> page = read.page().flatMap(each -> each.as(Symptom.class)).orElseThrow();
    Workspace workspace = new WorkspaceReader(folders).read();
    Fitting boat = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
    Fault fault = Fault.of(page, boat, read.library(), workspace.cases());
    assertThat(TriedCause.all(fault)).hasSize(2).allMatch(each -> each.minutes() > 0);
  }

  @Test
  void wrongFiguresWordsAndEntriesAreLeftOut() {
    String wrong =
        "---\ncauses:\n- {id: a, weight: much}\n- {id: a}\n- {title: no id}\nchecks:\n"
            + "- {id: c, ask: \"Is it?\", answers: [yes, no], finds: {yes: {a: mostly}}}\n"
            + "- {id: d, ask: \"Only one?\", answers: [yes]}\n---\n";
    assertThat(SymptomTable.read(new PageText(wrong))).isInstanceOf(SymptomTable.class);
    SymptomTable table = (SymptomTable) SymptomTable.read(new PageText(wrong));
    DraftSymptom draft = DraftSymptom.of(table).orElseThrow();
    assertThat(draft.page().text()).doesNotContain("mostly").doesNotContain("Only one");
    assertThat(draft.taken()).anyMatch(each -> each.startsWith("3 entries left out"));
    assertThat(table.page().text()).isEqualTo(wrong);
    SymptomRead none = SymptomTable.read(new PageText("---\ntitle: x\n---\n"));
    assertThat(DraftSymptom.of((SymptomTable) none)).isEqualTo(Optional.empty());
  }
}
