package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryReaderTest {
  @TempDir Path folder;

  @Test
  void aSecondReadingSeesWhatChangedAndKeepsTheRest() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write("articles/topics/a.md", "---\ntitle: First\n---\n");
    LibraryReader reader = new LibraryReader(workspace.folders());
    Library before = reader.read();
    workspace.write("articles/topics/a.md", "---\ntitle: The second title\n---\n");
    Files.delete(folder.resolve("articles/materials/spanner.md"));
    Library after = reader.read();
    assertThat(before.page("a").orElseThrow().title()).isEqualTo("First");
    assertThat(after.page("a").orElseThrow().title()).isEqualTo("The second title");
    assertThat(after.page("spanner")).isEmpty();
    assertThat(after.page("mend")).isEqualTo(before.page("mend"));
  }

  @Test
  void linksLeadBothWays() {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/topics/a.md", "---\ntitle: A\n---\n[Mend](../procedures/mend.md#steps)\n");
    Library library = workspace.library();
    assertThat(library.linksFrom("a")).containsExactly("mend");
    assertThat(library.linksTo("mend")).containsExactly("a");
  }

  @Test
  void aModelsHeadListsItsZones() {
    Library library = new TestWorkspace(folder).library();
    assertThat(library.model("plover-20").orElseThrow().head().zones())
        .containsExactly("cabin", "cockpit");
  }

  @Test
  void aFolderWithoutArticlesIsNoWorkspace() {
    LibraryReader reader = new LibraryReader(new WorkspaceFolders(folder));
    assertThatThrownBy(reader::read)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("articles");
  }

  @Test
  void aBodyKnowsItsLine() {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write("articles/topics/a.md", "---\r\ntitle: A\r\n---\r\nText.\r\n");
    Page<?> page = workspace.library().page("a").orElseThrow();
    assertThat(page.bodyLine()).isEqualTo(4);
    assertThat(page.body()).isEqualTo("Text.\n");
  }
}
