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
  private final transient TraceModel model;
  private final Column column = new Column(12).padded(20, 26, 20, 26);
  private final JButton read;

  CautionsPanel(TraceModel model) {
    super(new BorderLayout());
    this.model = model;
    read = Buttons.main("Read. Go on to the first question", model::cautionsRead);
    read.setName("cautions-read");
    JButton back = Buttons.plain("Another symptom", model::startAgain);
    Row buttons = Row.wrapping(10, read, back);
    Column foot = new Column(0).padded(8, 26, 16, 26);
    foot.add(buttons);
    add(column.scrolling(), BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
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
    column.revalidate();
    column.repaint();
  }
}
