package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;

/** The cautions of a symptom, alone on the screen before the first question. */
final class CautionsPanel extends JPanel {
  private static final int READABLE = 860;
  private final transient TraceModel model;
  private final Column column = new Column(12).padded(20, 26, 20, 26).atMost(READABLE);
  private final JButton read;
  private final Row buttons;

  CautionsPanel(TraceModel model) {
    super(new BorderLayout());
    this.model = model;
    read = Buttons.main("Read. Go on to the first question", model::cautionsRead);
    read.setName("cautions-read");
    JButton back = Buttons.plain("Another symptom", model::leave);
    buttons = Row.wrapping(10, read, back);
    add(column.scrolling(), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  JComponent first() {
    return read;
  }

  List<JComponent> regions() {
    return List.of(read);
  }

  private void refresh() {
    if (model.stage() != Stage.CAUTIONS) {
      return;
    }
    column.removeAll();
    String symptom = model.trace().map(trace -> trace.fault().page().title()).orElse("");
    column.add(Text.title(symptom));
    column.add(Text.reading("Before anything else:"));
    model.cautions().forEach(page -> column.add(CautionBox.whole(page)));
    column.add(buttons);
    column.revalidate();
    column.repaint();
  }
}
