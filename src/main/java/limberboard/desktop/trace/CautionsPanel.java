package limberboard.desktop.trace;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;

/** The cautions of a symptom, alone on the screen before the first question. */
final class CautionsPanel extends JPanel {
  private static final int READABLE = 860;
  private final transient TraceModel model;
  private final Column column = new Column(12).padded(20, 26, 20, 26).atMost(READABLE);
  private final Wrapped title = Text.title("");
  private final transient FocusedText keys = new FocusedText(title, column);
  private transient Optional<Shown> shown = Optional.empty();
  private final JButton read;
  private final Row buttons;

  CautionsPanel(TraceModel model) {
    super(new BorderLayout());
    this.model = model;
    keys.named("cautions-title");
    read = Buttons.main("Read. Go on to the first question", "cautions-read", model::cautionsRead);
    JButton back = Buttons.plain("Another symptom", model::leave);
    buttons = Row.wrapping(10, read, back);
    add(column.scrolling(), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  /** The heading takes the focus, so that no key says that it has been read. */
  JComponent first() {
    return title;
  }

  List<JComponent> regions() {
    return List.of(title, buttons);
  }

  /** What is shown; as long as it is equal, it stays as it is, and so does the focus in it. */
  private record Shown(String symptom, List<Page<Caution>> cautions) {}

  private void refresh() {
    if (model.stage() != Stage.CAUTIONS) {
      return;
    }
    String symptom = model.trace().map(trace -> trace.fault().page().title()).orElse("");
    Optional<Shown> wanted = Optional.of(new Shown(symptom, model.cautions()));
    if (wanted.equals(shown)) {
      return;
    }
    shown = wanted;
    column.removeAll();
    title.setText(symptom);
    column.add(title);
    column.add(Text.reading("Before anything else:"));
    model.cautions().forEach(page -> column.add(CautionBox.whole(page)));
    column.add(buttons);
    column.revalidate();
    column.repaint();
  }
}
