package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import limberboard.desktop.look.ThemeChoice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MemoryTest {
  private final Forgetful node = new Forgetful();
  private final Memory memory = new Memory(node);

  @Test
  void remembersTextsNumbersChoicesAndRectangles() {
    memory.remember("place", "pages");
    memory.remember("window", new Rectangle(10, -20, 1280, 800));
    node.put("theme", "DARK");
    node.put("text-percent", " 150 ");
    assertThat(memory.text("place")).contains("pages");
    assertThat(memory.bounds("window")).contains(new Rectangle(10, -20, 1280, 800));
    assertThat(memory.choice("theme", ThemeChoice.LIGHT)).isEqualTo(ThemeChoice.DARK);
    assertThat(memory.number("text-percent", 100, 200, 100)).isEqualTo(150);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "wide", "1,2,3", "1,2,3,4", "1,2,99999999999,800", "0,0,1280,-800"})
  void aDamagedRectangleCountsAsNotThere(String damaged) {
    node.put("window", damaged);
    assertThat(memory.bounds("window")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "large", "99", "201", "1e2", "99999999999"})
  void aDamagedNumberFallsBack(String damaged) {
    node.put("text-percent", damaged);
    assertThat(memory.number("text-percent", 100, 200, 115)).isEqualTo(115);
  }

  @Test
  void anUnknownChoiceFallsBack() {
    node.put("theme", "dark ");
    assertThat(memory.choice("theme", ThemeChoice.LIGHT)).isEqualTo(ThemeChoice.LIGHT);
  }

  @Test
  void aTextThatCannotBeKeptIsLeftOut() {
    memory.remember("note", "x".repeat(100_000));
    assertThat(memory.text("note")).isEmpty();
  }

  @Test
  void settingsAreThereNextTime() {
    Settings settings = new Settings(memory);
    settings.theme(ThemeChoice.DARK);
    settings.textPercent(175);
    settings.imperial(true);
    Settings next = new Settings(memory);
    assertThat(next.theme()).isEqualTo(ThemeChoice.DARK);
    assertThat(next.textPercent()).isEqualTo(175);
    assertThat(next.imperial()).isTrue();
  }

  @Test
  void textIsNeverSmallerThanUsualNorLargerThanTwice() {
    Settings settings = new Settings(memory);
    settings.textPercent(20);
    assertThat(settings.textPercent()).isEqualTo(100);
    settings.textPercent(900);
    assertThat(settings.textPercent()).isEqualTo(200);
  }
}
