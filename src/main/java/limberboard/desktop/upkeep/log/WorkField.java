package limberboard.desktop.upkeep.log;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import javax.swing.JTextField;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.UpkeepModel.Work;

/** Finds work by words of its title. Down goes to what was found, Enter takes the first. */
final class WorkField extends Column {
  private final transient LogListModel model;
  private final JTextField input = new JTextField();
  private final Wrapped words = Text.quiet("");
  private final CardList<Work> found =
      new CardList<>("Work with these words", work -> Card.of(work.title(), ""));
  private boolean refreshing;

  /**
   * A field.
   *
   * @param chosen is called once work has been chosen
   */
  WorkField(LogListModel model, Runnable chosen) {
    super(4);
    this.model = model;
    input.setName("log-work");
    input.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, "words of its title");
    found.setName("log-works");
    found.onChoose(
        work -> {
          model.chooseWork(work);
          chosen.run();
        });
    When.typed(
        input,
        () -> {
          if (!refreshing) {
            model.typeWork(input.getText());
          }
        });
    Keys.focused(input, "DOWN", this::down);
    Keys.focused(input, "ENTER", this::first);
    add(input);
    add(words);
    add(found);
  }

  /** What is typed into. */
  JTextField input() {
    return input;
  }

  private void down() {
    if (found.getModel().getSize() > 0) {
      found.setSelectedIndex(0);
      found.requestFocusInWindow();
    }
  }

  private void first() {
    if (model.matches().isEmpty()) {
      model.write();
    } else {
      found.setSelectedIndex(0);
      found.chooseSelected();
    }
  }

  /** Shows what the model has. */
  void refresh(LogDraft draft) {
    refreshing = true;
    if (!input.getText().equals(draft.typed())) {
      input.setText(draft.typed());
    }
    List<Work> matches = model.matches();
    if (!found.entries().equals(matches)) {
      found.show(matches);
    }
    found.setVisible(!matches.isEmpty());
    words.setText(model.workProblem());
    words.setVisible(!words.getText().isEmpty());
    refreshing = false;
    revalidate();
  }
}
