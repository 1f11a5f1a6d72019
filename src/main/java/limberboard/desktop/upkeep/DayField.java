package limberboard.desktop.upkeep;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.desktop.base.Days;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
import net.miginfocom.swing.MigLayout;

/** The day asked about: today, or another one that is typed. */
final class DayField extends JPanel {
  private static final int COLUMNS = 13;
  private final transient UpkeepModel model;
  private final JTextField input = new JTextField(COLUMNS);
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
    input.setToolTipText("What is due on this day: 20 May 2026. Press Enter.");
    today = Buttons.plain("Today", () -> model.day(Optional.empty()));
    today.setName("upkeep-today");
    Keys.focused(input, "ENTER", this::take);
    Keys.focused(input, "ESCAPE", this::back);
    input.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            take();
          }
        });
    add(label);
    add(input);
    add(today, "hidemode 3");
    model.onChange(this::refresh);
    refresh();
  }

  private void take() {
    Optional<LocalDate> day = Days.day(input.getText());
    input.putClientProperty("JComponent.outline", day.isEmpty() ? "error" : null);
    input
        .getAccessibleContext()
        .setAccessibleDescription(day.isEmpty() ? "This is no day; write it as 20 May 2026" : "");
    if (day.isPresent() && !day.get().equals(model.day())) {
      model.day(day);
    }
  }

  private void back() {
    shown = "";
    input.putClientProperty("JComponent.outline", null);
    refresh();
  }

  private void refresh() {
    String now = Days.written(model.day());
    if (!now.equals(shown)) {
      shown = now;
      input.setText(now);
    }
    today.setVisible(!model.day().equals(model.today()));
    revalidate();
  }
}
