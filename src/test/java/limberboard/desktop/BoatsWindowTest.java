package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.MouseWheelEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.boats.Field;
import limberboard.desktop.boats.UnsavedQuestion.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The Boats place through real events, at every size that it is to hold at. */
class BoatsWindowTest {
  private static final int USABLE = 110;
  private static final int LEAST_WORK = 200;

  @TempDir Path folder;

  private SmallWindow open(int width, int height, int percent) throws IOException {
    Memory memory = new Memory(new Forgetful());
    memory.remember("text-percent", Integer.toString(percent));
    SmallWindow window = SmallWindow.open(folder, memory);
    window.act(
        () -> {
          window.desk().window().frame().setMinimumSize(new Dimension(10, 10));
          window.desk().window().frame().setBounds(0, 0, width, height);
        });
    window.until(
        "the window has its size",
        () -> window.desk().window().frame().getRootPane().getWidth() > width - 40);
    return window;
  }

  private static void goToBoats(SmallWindow window) {
    window.press(KeyEvent.VK_B, KeyEvent.VK_ALT);
    window.until(
        "the boats are shown", () -> window.desk().boats().isRead() && window.shows("boats"));
  }

  /** What of a component can be seen. */
  private static Rectangle seen(SmallWindow window, String name) {
    JComponent component = window.find(name, JComponent.class);
    return window.ask(component::getVisibleRect);
  }

  @ParameterizedTest
  @CsvSource({
    "1024, 700, 100", "1024, 700, 150", "1024, 700, 200",
    "1280, 800, 100", "1280, 800, 150", "1280, 800, 200",
    "1920, 1080, 100", "1920, 1080, 150", "1920, 1080, 200",
  })
  void aNewBoatIsEnteredByKeyboardAloneAtEverySize(int width, int height, int percent)
      throws IOException {
    try (SmallWindow window = open(width, height, percent)) {
      enterANewBoat(window);
    }
  }

  /** Enters a new boat by keyboard alone, and looks whether each field can be seen. */
  static void enterANewBoat(SmallWindow window) {
    goToBoats(window);
    window.focus("new-boat");
    window.press(KeyEvent.VK_ENTER);
    JTextField name = window.find("boat-NAME", JTextField.class);
    window.until("the cursor is in Name", name::isFocusOwner);
    Rectangle seen = seen(window, "boat-NAME");
    assertThat(seen.width).isGreaterThanOrEqualTo(USABLE);
    assertThat(seen.height).isEqualTo(name.getHeight());
    assertThat(seen(window, "save-boat").height).isPositive();
    window.type("Ruff");
    assertThat(window.ask(() -> window.desk().boats().form().draft().text(Field.NAME)))
        .isEqualTo("Ruff");
    for (String next : new String[] {"boat-MODEL", "boat-HULL", "boat-BUILT"}) {
      window.press(KeyEvent.VK_TAB);
      JComponent field = window.find(next, JComponent.class);
      window.until("the cursor is in " + next, field::isFocusOwner);
      window.until(
          next + " can be seen",
          () -> field.getVisibleRect().width >= USABLE && field.getVisibleRect().height > 10);
    }
  }

  @Test
  void theFormKeepsItsRoomWhenABoatFollowsANewOne() throws IOException {
    try (SmallWindow window = open(1280, 800, 100)) {
      goToBoats(window);
      int before = seen(window, "boat-NAME").width;
      window.click("new-boat");
      window.until("a new boat", () -> window.desk().boats().form().isNew());
      assertThat(seen(window, "boat-NAME").width).isCloseTo(before, within(20));
      window.act(() -> window.desk().boats().dropChanges());
      assertThat(seen(window, "boat-NAME").width).isCloseTo(before, within(20));
      JComponent drawing = window.find("boat-profile", JComponent.class);
      window.until("the drawing has its room", () -> drawing.getVisibleRect().height > 100);
    }
  }

  @Test
  void whatWasDoneIsReadableInASmallWindow() throws IOException {
    try (SmallWindow window = open(1024, 700, 100)) {
      window.act(() -> window.desk().session().choose(Optional.of("knot")));
      goToBoats(window);
      JTable log = window.find("log", JTable.class);
      window.until(
          "the work has room", () -> log.getColumnModel().getColumn(1).getWidth() >= LEAST_WORK);
      assertThat(window.ask(() -> log.getParent().getWidth())).isLessThan(log.getWidth());
    }
  }

  @Test
  void theWheelScrollsTheFormOverTheNoteToo() throws IOException {
    try (SmallWindow window = open(1024, 700, 100)) {
      goToBoats(window);
      JTextArea note = window.find("boat-NOTE", JTextArea.class);
      JViewport form =
          window.ask(
              () -> {
                JComponent at =
                    (JComponent) SwingUtilities.getAncestorOfClass(JViewport.class, note);
                JViewport outer =
                    (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, at.getParent());
                note.scrollRectToVisible(new Rectangle(0, 0, 5, 5));
                return outer;
              });
      int before = window.ask(() -> form.getViewPosition().y);
      window.act(
          () ->
              note.dispatchEvent(
                  new MouseWheelEvent(
                      note,
                      MouseWheelEvent.MOUSE_WHEEL,
                      System.currentTimeMillis(),
                      0,
                      5,
                      5,
                      0,
                      false,
                      MouseWheelEvent.WHEEL_UNIT_SCROLL,
                      3,
                      before > 0 ? -3 : 3)));
      window.until("the form has scrolled", () -> form.getViewPosition().y != before);
    }
  }

  @Test
  void anUnsavedBoatIsMarkedByAWordAtTheChooserUntilItIsSaved() throws IOException {
    try (SmallWindow window = open(1280, 800, 100)) {
      window.act(() -> window.desk().session().choose(Optional.of("knot")));
      goToBoats(window);
      JComboBox<?> chooser = window.find("boat-chooser", JComboBox.class);
      String before = window.ask(() -> chooser.getSelectedItem().toString());
      assertThat(before).startsWith("Knot");
      window.focus("boat-NOTE");
      window.type("x");
      window.until(
          "the boat is marked",
          () -> chooser.getSelectedItem().toString().equals("Unsaved: " + before));
      window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
      window.until("the mark is gone", () -> chooser.getSelectedItem().toString().equals(before));
      assertThat(Files.readString(folder.resolve("boats/knot/boat.yaml"))).contains("x");
    }
  }

  @Test
  void theFormMarksWhatWasFittedLater() throws IOException {
    try (SmallWindow window = open(1280, 800, 100)) {
      window.act(() -> window.desk().session().choose(Optional.of("knot")));
      goToBoats(window);
      window.act(() -> window.desk().boats().form().set(Field.BUILT, "2011"));
      JComboBox<?> stove = window.find("fitted-stove", JComboBox.class);
      assertThat(window.ask(() -> stove.getSelectedItem().toString())).isEqualTo("No stove");
      window.focus("fitted-stove");
      window.press(KeyEvent.VK_DOWN);
      window.until(
          "the stove fitted later is chosen",
          () -> stove.getSelectedItem().toString().equals("Gas stove, fitted later"));
      window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
      window.until("it is saved", () -> !window.desk().boats().form().isChanged());
      assertThat(Files.readString(folder.resolve("boats/knot/boat.yaml")))
          .contains("built: 2011", "stove: stove-gas");
    }
  }

  @Test
  void anotherPlaceIsShownOnlyOnceUnsavedChangesAreAnswered() throws IOException {
    try (SmallWindow window = open(1280, 800, 100)) {
      window.act(() -> window.desk().session().choose(Optional.of("knot")));
      goToBoats(window);
      window.act(() -> window.desk().boats().askUnsaved(() -> Answer.STAY));
      window.act(() -> window.desk().boats().form().set(Field.NAME, "Red Knot"));
      window.press(KeyEvent.VK_P, KeyEvent.VK_ALT);
      assertThat(window.shows("boat-NAME")).isTrue();
      window.act(() -> window.desk().boats().askUnsaved(() -> Answer.SAVE));
      window.press(KeyEvent.VK_P, KeyEvent.VK_ALT);
      window.until("the pages are shown", () -> !window.shows("boat-NAME"));
      assertThat(Files.readString(window.folders().boats().resolve("knot/boat.yaml")))
          .contains("Red Knot");
      assertThat(window.slowOnEventThread()).isEmpty();
    }
  }

  @Test
  void aFormThatCannotBeSavedIsNotLeftAndTheReasonLooksLikeAnError() throws IOException {
    try (SmallWindow window = open(1280, 800, 100)) {
      window.act(() -> window.desk().session().choose(Optional.of("knot")));
      goToBoats(window);
      Path file = window.folders().boats().resolve("knot/boat.yaml");
      window.act(() -> window.desk().boats().askUnsaved(() -> Answer.SAVE));
      window.act(() -> window.desk().boats().form().set(Field.NAME, "Red Knot"));
      Files.writeString(file, "name: [broken\n");
      window.press(KeyEvent.VK_P, KeyEvent.VK_ALT);
      window.until("a failure is told", () -> window.desk().notices().current().isPresent());
      assertThat(window.ask(() -> window.desk().notices().current().orElseThrow().failure()))
          .isTrue();
      assertThat(window.shows("boat-NAME")).isTrue();
      assertThat(window.ask(() -> window.desk().boats().form().draft().text(Field.NAME)))
          .isEqualTo("Red Knot");
      assertThat(file).hasContent("name: [broken");
    }
  }
}
