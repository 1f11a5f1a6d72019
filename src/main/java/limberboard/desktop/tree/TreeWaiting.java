package limberboard.desktop.tree;

import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** Says that a tree is being worked out, how far it is, and lets it be stopped. */
final class TreeWaiting extends RaisedColumn {
  private static final int MOMENT = 150;
  private final transient TreeModel model;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.reading("");
  private final JProgressBar running = new JProgressBar();
  private final JButton button = Buttons.plain("", this::press);
  private final Timer clock = new Timer(MOMENT, e -> count());

  TreeWaiting(TreeModel model) {
    super(10);
    this.model = model;
    running.setIndeterminate(true);
    running.getAccessibleContext().setAccessibleName("The tree is being worked out");
    button.setName("tree-stop");
    Column bar = new Column(0).atMost(360);
    bar.add(running);
    add(title);
    add(words);
    add(bar);
    add(Row.wrapping(8, button));
    refresh();
  }

  JComponent first() {
    return button;
  }

  boolean isFocused() {
    return button.isFocusOwner();
  }

  void refresh() {
    boolean growing = model.isGrowing();
    title.setText(growing ? "The tree is being worked out" : "The tree is not drawn");
    running.setVisible(growing);
    button.setText(growing ? "Stop" : "Draw it");
    count();
    if (growing) {
      clock.start();
    } else {
      clock.stop();
    }
  }

  private void count() {
    words.setText(
        model.isGrowing()
            ? "Every answer is followed to its end. " + model.forksSoFar() + " steps so far."
            : "Working it out was stopped. The questions go on without it.");
  }

  private void press() {
    if (model.isGrowing()) {
      model.stop();
    } else {
      model.tryAgain();
    }
  }
}
