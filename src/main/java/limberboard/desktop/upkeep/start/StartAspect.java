package limberboard.desktop.upkeep.start;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.boat.Boat;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Scrolling;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.words.CountWords;
import limberboard.words.DayText;

/** The start of a bought boat's log: what is known, by round and by kind of work. */
public final class StartAspect implements View {
  /** By which it is gone to. */
  public static final String ID = "start";

  private static final int DAY_COLUMNS = 12;
  private final StartModel model;
  private final UpkeepTools tools;
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final Wrapped about = Text.plain("");
  private final JTextField survey = new JTextField(DAY_COLUMNS);
  private final Wrapped surveyWrong = Text.strong("");
  private final Wrapped state = Text.quiet("");
  private final JButton particulars;
  private final JButton write;
  private final JButton clear;
  private final JComponent surveyed;
  private final StartForm form;

  /** The aspect. */
  public StartAspect(UpkeepTools tools, StartModel model) {
    this.model = model;
    this.tools = tools;
    panel.setOpaque(false);
    write = Buttons.main("Write into the log", "start-write", model::write);
    write.setToolTipText("Ctrl+S; Ctrl+Z takes all of it back");
    clear = Buttons.plain("Clear", "start-clear", model::clear);
    particulars = Buttons.plain("Her particulars", "start-particulars", this::particulars);
    form = new StartForm(model, write::requestFocusInWindow);
    JButton tick = Buttons.plain("Tick what it looked at", "start-survey-tick", this::survey);
    survey.setName("start-survey");
    survey.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "12 Sep 2026");
    Keys.focused(survey, "ENTER", this::survey);
    JLabel label = new JLabel("Survey of");
    label.setLabelFor(survey);
    surveyed = Row.wrapping(8, label, survey, tick);
    Column head = new Column(6).padded(0, 0, 0, 4);
    head.add(about);
    head.add(surveyed);
    head.add(surveyWrong);
    Column foot = new Column(4);
    foot.add(state);
    foot.add(Row.wrapping(8, write, clear, particulars));
    form.padded(0, 0, 12, 12);
    panel.add(head, BorderLayout.NORTH);
    panel.add(Scrolling.of(form), BorderLayout.CENTER);
    panel.add(foot, BorderLayout.SOUTH);
    Keys.within(panel, "control S", model::write);
    model.onChange(this::refresh);
    refresh();
  }

  private void particulars() {
    model.boat().ifPresent(boat -> tools.place().navigator().openBoat(boat.id()));
  }

  private void survey() {
    model.survey(survey.getText());
    if (model.surveyWrong().isEmpty()) {
      form.first().ifPresent(JComponent::requestFocusInWindow);
    }
  }

  /** Whoever came before the questions were worked out waits at the only button there was. */
  private void fromTheButton() {
    if (particulars.isFocusOwner()) {
      survey.requestFocusInWindow();
    }
  }

  private void refresh() {
    boolean asks = !model.questions().isEmpty();
    boolean begins = asks && !surveyed.isVisible();
    about.setText(about());
    surveyed.setVisible(asks);
    surveyWrong.setText(model.surveyWrong());
    surveyWrong.setVisible(!model.surveyWrong().isEmpty());
    write.setVisible(asks);
    write.setEnabled(model.canWrite());
    clear.setVisible(asks);
    clear.setEnabled(model.isTouched());
    state.setText(state());
    state.setVisible(asks);
    form.refresh();
    panel.revalidate();
    panel.repaint();
    if (begins) {
      Later.run(this::fromTheButton);
    }
  }

  private String about() {
    String bought = model.boat().flatMap(Boat::bought).map(DayText::written).orElse("");
    if (bought.isEmpty()) {
      return "This begins the log of a boat that was bought from another owner. Write under Boats,"
          + " in her particulars, when you bought her.";
    }
    return model.questions().isEmpty()
        ? "Bought on " + bought + ". Nothing is left of which nobody knows when it was done."
        : "Bought on "
            + bought
            + ". When was this last done, and how do you know? A month or a year is enough; what"
            + " nobody knows stays not known, and is looked at first. It goes by what is fitted,"
            + " also later: see her particulars. Enter goes on.";
  }

  private String state() {
    int lines = model.lines().size();
    long wrong = model.wrong();
    return wrong > 0
        ? CountWords.of(wrong, "answer has", "answers have") + " no day that can be read yet."
        : lines == 0
            ? "Nothing is answered yet."
            : CountWords.of(lines, "line")
                + " for the log, each with how it is known. Nothing is written before you say so.";
  }

  @Override
  public Name name() {
    return new Name(ID, "What is known", 'K');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return model.questions().isEmpty() ? List.of(particulars) : List.of(survey, form, write);
  }
}
