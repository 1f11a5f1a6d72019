package limberboard.desktop.upkeep.sheets;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
import net.miginfocom.swing.MigLayout;

/** Asks how much time there is, until when, and on which days. Enter plans, in any field. */
final class PlanForm {
  private static final int HOURS_COLUMNS = 3;
  private static final int DAY_COLUMNS = 10;

  /** The same at any size of text, so that the row wraps into two lines and no more. */
  private static final String DAYS_WIDTH = "width 200px!";

  private final PlanModel model;
  private final Runnable beforeAsking;
  private final JTextField hours = new JTextField(HOURS_COLUMNS);
  private final JTextField until = new JTextField(DAY_COLUMNS);
  private final JTextField days = new JTextField();
  private final JCheckBox firstTime = new JCheckBox("First time");
  private final JButton plan = Buttons.main("Plan it", "plan-it", this::ask);
  private String usual = "";

  /**
   * A form.
   *
   * @param beforeAsking is called whenever a plan is asked for
   */
  PlanForm(PlanModel model, Runnable beforeAsking) {
    this.model = model;
    this.beforeAsking = beforeAsking;
    field(hours, "plan-hours", "Hours there are", "How many hours there are in all: 16, 5.5, 5:30");
    field(until, "plan-until", "Until", "The day by which it is to be done: 15 Apr 2027");
    field(
        days,
        "plan-days",
        "Free days",
        "Days with commas between: 20-21 Mar, 10 Apr; or with their hours: 20 Mar=6, 21 Mar=4."
            + " Without any, weekends are proposed.");
    days.putClientProperty("JTextField.placeholderText", "weekends, or 20-21 Mar");
    firstTime.setName("plan-first-time");
    firstTime.setOpaque(false);
    firstTime.setToolTipText("Reckon half as much time again, as it takes without practice");
    Keys.focused(firstTime, "ENTER", this::ask);
    firstTime.addActionListener(e -> askAgain());
  }

  private void field(JTextField field, String name, String title, String tip) {
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(title);
    field.setToolTipText(tip);
    Keys.focused(field, "ENTER", this::ask);
  }

  /** The fields with their labels, from left to right. */
  List<JComponent> parts() {
    return List.of(
        labelled("Hours", hours),
        labelled("Until", until),
        labelled("Days", days),
        firstTime,
        plan);
  }

  private JComponent labelled(String words, JTextField field) {
    JPanel pair = new JPanel(new MigLayout("insets 0, gapx 6"));
    pair.setOpaque(false);
    JLabel label = new JLabel(words);
    label.setLabelFor(field);
    pair.add(label);
    pair.add(field, field == days ? DAYS_WIDTH : "");
    return pair;
  }

  /** Where the keyboard begins. */
  JComponent first() {
    return hours;
  }

  /** Plans what is typed. */
  void ask() {
    beforeAsking.run();
    model.ask(
        new PlanModel.Ask(
            hours.getText().strip(),
            until.getText().strip(),
            days.getText().strip(),
            firstTime.isSelected()));
  }

  /** Where a plan is there already, ticking this makes it anew. */
  private void askAgain() {
    if (!model.lines().isEmpty()) {
      ask();
    }
  }

  /** Offers the usual day, until another is typed. */
  void refresh() {
    String now = model.usualUntil().orElse("");
    if (!now.isEmpty() && !now.equals(usual)) {
      if (until.getText().isBlank() || until.getText().equals(usual)) {
        until.setText(now);
      }
      usual = now;
    }
  }
}
