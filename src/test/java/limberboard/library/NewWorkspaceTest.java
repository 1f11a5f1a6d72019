package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewWorkspaceTest {
  @TempDir Path folder;

  @Test
  void aNewWorkspaceHasItsFoldersAndCanBeRead() throws IOException {
    WorkspaceFolders made = NewWorkspace.in(folder.resolve("yard"));
    assertThat(made.articles()).isDirectory();
    assertThat(made.articles().resolve("symptoms")).isDirectory();
    assertThat(made.boats()).isDirectory().hasFileName("boats");
    assertThat(made.words()).isDirectory();
    assertThat(WorkspaceFolders.around(folder.resolve("yard"))).contains(made);
  }

  @Test
  void aWorkspaceThatIsThereIsLeftAlone() throws IOException {
    NewWorkspace.in(folder);
    assertThatThrownBy(() -> NewWorkspace.in(folder))
        .isInstanceOf(FileAlreadyExistsException.class)
        .hasMessageContaining("it is a workspace already");
  }
}
