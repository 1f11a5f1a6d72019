package limberboard.desktop.upkeep;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.words.DayText;
import net.miginfocom.swing.MigLayout;

/** The day asked about: today, or another one that is typed, told back while it is typed. */
final class DayField extends JPanel {
  private static final int COLUMNS = 13;
  private final transient UpkeepModel model;
  private final JTextField input = new JTextField(COLUMNS);
  private final Wrapped words = Text.quiet("");
  private final JButton today;
  private String shown = "";

  DayField(UpkeepModel model) {
    super(new MigLayout("insets 2 0 0 0, gapx 6", "[][][]", "[]"));
    this.model = model;
    setOpaque(false);
    JLabel label = new JLabel("On");
    label.setLabelFor(input);
    input.setName("upkeep-day");
    input.getAccessibleContext().setAccessibleName("Day asked about");
    input.setToolTipText("What is due on this day: 20 May 2026, or 20.5.2026. Press Enter.");
    words.setName("upkeep-day-words");
    today = Buttons.plain("Today", "upkeep-today", this::today);
    Keys.focused(input, "ENTER", this::take);
    Keys.focused(input, "ESCAPE", this::back);
    When.typed(input, this::tellBack);
    input.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            if (!e.isTemporary() && !input.getText().strip().equals(shown)) {
              take();
            }
          }
        });
    add(label);
    add(input);
    add(today, "hidemode 3");
    model.onChange(this::refresh);
    refresh();
  }

  /** What the typed day is read as, or why it is none; hidden while there is nothing to say. */
  Wrapped words() {
    return words;
  }

  /** Puts the focus where the day is typed. */
  void focus() {
    input.requestFocusInWindow();
    input.selectAll();
  }

  private void take() {
    model.ask(input.getText());
    if (model.refusedDay().isEmpty()) {
      back();
    }
  }

  private void today() {
    model.day(java.util.Optional.empty());
    back();
  }

  private void back() {
    shown = "";
    if (model.refusedDay().isEmpty()) {
      refresh();
    } else {
      model.forgetRefusedDay();
    }
  }

  private void tellBack() {
    String text = input.getText();
    boolean same = text.equals(shown);
    DayText.Read read = model.read(text);
    String told =
        read.day()
            .map(on -> "Read as " + DayText.written(on) + ". Enter shows it.")
            .orElse(read.why());
    words.setText(same ? "" : told);
    words.setVisible(!same);
    boolean wrong = !same && read.day().isEmpty();
    input.putClientProperty("JComponent.outline", wrong ? "error" : null);
    input.getAccessibleContext().setAccessibleDescription(words.getText());
    revalidate();
  }

  private void refresh() {
    String now = DayText.written(model.day());
    if (!now.equals(shown) && model.refusedDay().isEmpty()) {
      shown = now;
      input.setText(now);
      tellBack();
    }
    today.setVisible(!model.day().equals(model.today()) || !model.refusedDay().isEmpty());
    revalidate();
  }
}
