package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.desktop.parts.CautionBox;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * In the smallest window that is promised, with text of the usual and of twice the usual size:
 * every button is wholly in sight or can be scrolled to, as wide as its words, and every head of a
 * column is readable. Needs a display; a virtual one will do.
 */
class WindowRoomTest {
  private static final Dimension SMALL = new Dimension(1024, 700);
  private static MeasuredWindow window;
  private static WindowAssembly desk;

  @BeforeAll
  static void open() throws IOException {
    window = MeasuredWindow.open(SMALL, "the window");
    desk = window.desk();
  }

  @AfterAll
  static void close() throws IOException {
    if (window != null) {
      window.close();
    }
  }

  static Stream<Arguments> scenes() {
    return Stream.of(100, 200)
        .flatMap(text -> Stream.of(Scene.values()).map(scene -> Arguments.of(scene, text)));
  }

  private static JRootPane root() {
    return desk.window().frame().getRootPane();
  }

  private static void show(Scene scene, int text) throws IOException {
    OnEventThread.run(
        () -> {
          desk.trace().finish();
          scene.set(desk);
          desk.settings().textPercent(text);
          desk.window().frame().setSize(SMALL);
        });
    window.settle(2);
  }

  private static boolean scrolls(Component component) {
    return SwingUtilities.getAncestorOfClass(JViewport.class, component) != null;
  }

  private static Optional<String> cut(AbstractButton button) {
    String words = button.getText() + " " + button.getName() + " " + button.getBounds();
    if (button.getWidth() < button.getPreferredSize().width) {
      return Optional.of("narrower than its words: " + words);
    }
    Rectangle seen = button.getVisibleRect();
    boolean whole = seen.width == button.getWidth() && seen.height == button.getHeight();
    return whole || scrolls(button) ? Optional.empty() : Optional.of("cut off: " + words);
  }

  private static List<String> cutHeads() {
    List<String> cut = new ArrayList<>();
    for (JTable table : MeasuredWindow.all(root(), JTable.class)) {
      for (int i = 0; i < table.getColumnCount(); i++) {
        int width = table.getColumnModel().getColumn(i).getWidth();
        Object head = table.getColumnModel().getColumn(i).getHeaderValue();
        JComponent drawn =
            (JComponent)
                table
                    .getTableHeader()
                    .getDefaultRenderer()
                    .getTableCellRendererComponent(table, head, false, false, -1, i);
        if (width > 0 && width < drawn.getPreferredSize().width) {
          cut.add(table.getName() + ": " + head);
        }
      }
    }
    return cut;
  }

  /** When cautions have been read, every one's name is in sight, in one box. */
  @Test
  void noCautionIsBehindAnother() throws IOException {
    List<WorkCaution> cautions =
        new WorkCautions(desk.session().library(), Optional.empty())
            .of(desk.session().library().page("rebed-deck-fitting").orElseThrow());
    WorkCaution first = cautions.get(0);
    OnEventThread.run(
        () -> {
          CautionBox box =
              CautionBox.names(cautions.subList(0, 2), each -> "read", new JButton("Whole text"));
          box.setSize(760, 400);
          int one =
              CautionBox.names(List.of(first), each -> "read", new JButton("Whole text"))
                  .getPreferredSize()
                  .height;
          assertThat(box.getAccessibleContext().getAccessibleName())
              .contains(first.title() + " (read)")
              .contains(cautions.get(1).title() + " (read)");
          assertThat(box.getPreferredSize().height).isLessThan(2 * one);
        });
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void nothingToPressIsCutOff(Scene scene, int text) throws IOException {
    show(scene, text);
    List<String> cut =
        OnEventThread.get(
            () ->
                MeasuredWindow.all(root(), AbstractButton.class).stream()
                    .filter(button -> button.getText() != null && !button.getText().isEmpty())
                    .map(WindowRoomTest::cut)
                    .flatMap(Optional::stream)
                    .toList());
    assertThat(cut).isEmpty();
    assertThat(OnEventThread.get(WindowRoomTest::cutHeads)).as("heads of columns").isEmpty();
    assertThat(OnEventThread.get(() -> MeasuredWindow.all(root(), AbstractButton.class)))
        .isNotEmpty();
  }
}
