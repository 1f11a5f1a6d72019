package limberboard.writing.typing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.print.text.PlainText;
import limberboard.workings.sums.SumUseCheck;
import limberboard.workings.sums.Sums;
import limberboard.writing.PageText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageTypingTest {
  @TempDir Path folder;

  private static List<Problem> of(String path, List<Problem> problems) {
    return problems.stream().filter(each -> each.file().equals(path)).toList();
  }

  /** Text typed into every page of the demo is judged as it would be once it is saved. */
  @Test
  void whatIsSaidOfTypedTextIsWhatIsSaidOfTheFile() throws IOException {
    TestWorkspace small = new TestWorkspace(folder);
    small.write(
        "articles/procedures/other.md",
        "---\ntitle: Other\nsystem: hull\nwork: mend\nskill: owner\nminutes: 5\nbefore: [mend]\n"
            + "---\n[Mend](mend.md)\n");
    List<String> spoilt =
        List.of(
            "---\ntitle: \n---\n",
            "---\ntitle: A\nzones: [cabin, bow]\ntools: [spaner]\n---\n[a](gone.md) ![b](c.svg)\n",
            "no header",
            "---\na: [\n---\n",
            "---\ntitle: Mend\nsystem: hull\nwork: mend\nskill: owner\nminutes: 5\n"
                + "before: [other]\nround: [{do: mend}]\n---\n<b>\n");
    int problems = 0;
    for (String text : spoilt) {
      for (String path : List.of("articles/procedures/mend.md", "articles/topics/a.md")) {
        TestWorkspace fresh = new TestWorkspace(folder);
        LibraryReader reader = new LibraryReader(fresh.folders());
        reader.read();
        Kind kind = path.contains("topics") ? Kind.TOPIC : Kind.PROCEDURE;
        List<Problem> typed = reader.typing(path, kind).read(text).problems();
        fresh.write(path, text);
        List<Problem> saved = of(path, fresh.library().problems());
        assertThat(typed).as(path + text).containsExactlyInAnyOrderElementsOf(saved);
        problems += saved.size();
        Files.delete(folder.resolve(path));
      }
    }
    assertThat(problems).isGreaterThan(12);
  }

  @Test
  void theDemoIsReadFromTypedTextAsFromItsFiles() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    LibraryReader reader = new LibraryReader(folders, List.of(new SumUseCheck(Sums.ofTheTrade())));
    Library library = reader.read();
    List<Page<?>> pages = new ArrayList<>(library.pages());
    for (int i = 0; i < pages.size(); i += 9) {
      Page<?> page = pages.get(i);
      String text = PageText.of(Files.readAllBytes(folders.root().resolve(page.path()))).plain();
      var typed = reader.typing(page.path(), page.kind()).read(text);
      assertThat(typed.page().orElseThrow()).isEqualTo(page);
      assertThat(typed.problems()).isEqualTo(of(page.path(), library.problems()));
      assertThat(typed.library().linksFrom(page.id())).isEqualTo(library.linksFrom(page.id()));
      assertThat(typed.library().linksTo(page.id())).isEqualTo(library.linksTo(page.id()));
    }
  }

  @Test
  void problemsAreMarkedAtTheirLetters() throws IOException {
    TestWorkspace small = new TestWorkspace(folder);
    LibraryReader reader = new LibraryReader(small.folders());
    reader.read();
    PageTyping typing = new PageTyping(reader.typing("articles/procedures/new.md", Kind.PROCEDURE));
    String text =
        "---\ntitle: New\nsystem: hul\nwork: mend\nskill: owner\nminutes: 5\n"
            + "tools: [spanner, spaner]\n---\nFirst [gone](gone.md).\n";
    List<MarkedProblem> problems = typing.read(new PageText(text)).problems();
    assertThat(problems).hasSize(4);
    assertThat(problems.stream().map(each -> each.place().orElseThrow().of(text)))
        .containsExactly("hul", "hul", "spaner", "gone.md");
    assertThat(problems.stream().map(MarkedProblem::column)).containsExactly(9, 9, 18, 14);
    var twice = reader.typing("articles/topics/mend.md", Kind.TOPIC).read("---\ntitle: A\n---\n");
    assertThat(twice.problems().toString())
        .contains("has the same id as articles/procedures/mend.md");
    PageTyping.Read broken = typing.read(new PageText("\uFEFFno header\r\n"));
    assertThat(broken.page()).isEmpty();
    assertThat(broken.problems().get(0).column()).isEqualTo(1);
  }

  @Test
  void thePageIsCutForABoatBeforeItIsSaved() throws IOException {
    WorkspaceReader reader = new WorkspaceReader(new WorkspaceFolders(Path.of("")));
    Workspace workspace = reader.read();
    Fitting dunlin = new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15));
    PageTyping typing = new PageTyping(reader.typing("articles/topics/new.md", Kind.TOPIC));
    PageText text =
        new PageText(
            "---\ntitle: New\nonly-for:\n  Not hers: {model: tarnwick-21}\n---\n"
                + "For all.\n\n## Not hers\n\nHidden.\n");
    String shown =
        new PlainText().render(typing.read(text).cut(Optional.of(dunlin)).orElseThrow(), 80);
    assertThat(shown).contains("For all.").doesNotContain("Hidden.");
  }
}
