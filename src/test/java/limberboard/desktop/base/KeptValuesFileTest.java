package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import limberboard.desktop.support.Steps;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptValuesFileTest {
  @TempDir Path folder;
  private Path file;
  private final Steps writer = new Steps();
  private final List<IOException> trouble = new ArrayList<>();

  @BeforeEach
  void name() {
    file = folder.resolve("config/limberboard/window.txt");
  }

  private KeptValuesFile kept() {
    return new KeptValuesFile(file, writer, trouble::add);
  }

  @Test
  void whatIsKeptIsThereNextTime() {
    KeptValuesFile first = kept();
    first.put("theme", "DARK");
    first.put("text-percent", "150");
    assertThat(first.get("theme")).isEqualTo("DARK");
    assertThat(writer.waiting()).isEqualTo(1);
    assertThat(file).doesNotExist();
    writer.all();
    assertThat(file).hasContent("text-percent = 150\ntheme = DARK\n");
    assertThat(kept().get("text-percent")).isEqualTo("150");
  }

  @Test
  void twoWindowsDoNotTakeEachOthersValuesAway() {
    KeptValuesFile one = kept();
    KeptValuesFile other = kept();
    one.put("theme", "DARK");
    other.put("imperial", "1");
    writer.all();
    assertThat(file).hasContent("imperial = 1\ntheme = DARK\n");
  }

  @Test
  void aDamagedFileCountsAsNotThere() throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1, 2});
    KeptValuesFile kept = kept();
    assertThat(kept.get("theme")).isEmpty();
    kept.put("theme", "LIGHT");
    writer.all();
    assertThat(file).hasContent("theme = LIGHT\n");
    assertThat(trouble).isEmpty();
  }

  @Test
  void aFileThatCannotBeWrittenIsToldAndStopsNothing() throws IOException {
    Files.createDirectories(file);
    KeptValuesFile kept = kept();
    kept.put("theme", "DARK");
    writer.all();
    assertThat(trouble).hasSize(1);
    assertThat(kept.get("theme")).isEqualTo("DARK");
  }

  @Test
  void howThingsAreSeenIsThePersonsAndTheRestTheWorkspaces() {
    Forgetful person = new Forgetful();
    Forgetful workspace = new Forgetful();
    Memory memory = new Memory(new PersonAndWorkspace(person, workspace));
    memory.remember("theme", "DARK");
    memory.remember("boat", "dunlin");
    memory.remember("divider-pages", "300");
    assertThat(person.get("theme")).isEqualTo("DARK");
    assertThat(workspace.get("theme")).isEmpty();
    assertThat(workspace.get("boat")).isEqualTo("dunlin");
    assertThat(workspace.get("divider-pages")).isEqualTo("300");
  }

  @Test
  void theLastWorkspaceOpenedStandsFirst() {
    Recent recent = new Recent(new Forgetful());
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");
    recent.opened(one);
    recent.opened(two);
    recent.opened(one);
    assertThat(recent.all()).containsExactly(one, two);
  }
}
