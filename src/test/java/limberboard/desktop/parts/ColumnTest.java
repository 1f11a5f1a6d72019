package limberboard.desktop.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Rectangle;
import javax.swing.JButton;
import javax.swing.JScrollPane;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Text that wraps must never be cut off, whatever the width and the text size. */
class ColumnTest {
  private static final String LONG =
      "Take the cushions off the berth and dry the inner end of the tube. Let a helper hold the"
          + " hose on the seal for three minutes with the bowsprit in, then three with it out.";

  @ParameterizedTest
  @CsvSource({"1200,100", "500,100", "220,100", "900,200", "260,200"})
  void everyWrappedTextIsAsHighAsItsLines(int width, int percent) throws Exception {
    EventQueue.invokeAndWait(
        () -> {
          Theme.installFonts();
          Theme.apply(ThemeChoice.LIGHT, percent);
          Column column = column();
          JScrollPane pane = column.scrolling();
          pane.setSize(width, 400);
          layOut(pane);
          layOut(pane);
          assertNothingCutOff(column);
        });
  }

  private static Column column() {
    Column nested = new Column(4).padded(10, 10, 10, 10);
    nested.add(Row.growing(8, 0, Text.plain(LONG), new JButton("Change")));
    nested.add(
        Row.wrapping(
            8, new JButton("Few drops"), new JButton("Runs in"), new JButton("Can't tell")));
    Column column = new Column(6);
    column.add(Text.question(LONG));
    column.add(Text.reading(LONG));
    column.add(nested);
    Form form = new Form(6);
    JButton field = new JButton("x");
    form.line("Hull number", field, field);
    form.wide(Text.quiet(LONG));
    column.add(form);
    return column;
  }

  private static void layOut(Container container) {
    container.doLayout();
    for (Component child : container.getComponents()) {
      if (child instanceof Container nested) {
        layOut(nested);
      }
    }
  }

  private static void assertNothingCutOff(Container container) {
    Rectangle before = new Rectangle();
    for (Component child : container.getComponents()) {
      if (!child.isVisible()) {
        continue;
      }
      if (child instanceof Wrapped || child instanceof JButton) {
        assertThat(child.getHeight()).isGreaterThanOrEqualTo(child.getPreferredSize().height);
      }
      assertThat(child.getX() + child.getWidth()).isLessThanOrEqualTo(container.getWidth());
      assertThat(child.getY() + child.getHeight()).isLessThanOrEqualTo(container.getHeight());
      assertThat(before.intersects(child.getBounds())).as("overlap").isFalse();
      before = child.getBounds();
      if (child instanceof Container nested && !(child instanceof JButton)) {
        assertNothingCutOff(nested);
      }
    }
  }

  @Test
  void aNumberStaysWithItsPerCentSign() {
    assertThat(Text.plain("at 66 %, was 33 %").getText()).isEqualTo("at 66\u00a0%, was 33\u00a0%");
  }
}
