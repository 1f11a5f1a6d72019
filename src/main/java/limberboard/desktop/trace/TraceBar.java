package limberboard.desktop.trace;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPopupMenu;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/**
 * What stands above a trace: what is traced, what is looked at, and what can be done with the whole
 * trace. Where there is little room, what is seldom wanted is in a menu.
 */
final class TraceBar extends Column {
  private static final int ONE_LINE = 1120;
  private static final int GAP = 8;
  private final transient TraceModel model;
  private final Wrapped what = Text.heading("");
  private final AspectSwitch looks;
  private final JToggleButton causes = new JToggleButton("Causes");
  private final JButton undo;
  private final JButton more = Buttons.menu("More", this::open);
  private final transient List<JButton> buttons;
  private boolean tight;
  private boolean narrow;

  /**
   * A bar.
   *
   * @param deeds what can be done with the whole trace
   * @param showCauses shows the causes and answers in place of the step, or the step again
   */
  TraceBar(
      TraceModel model,
      Aspects aspects,
      List<JButton> deeds,
      java.util.function.Consumer<Boolean> showCauses) {
    super(GAP);
    this.model = model;
    this.looks = new AspectSwitch(aspects);
    this.buttons = List.copyOf(deeds);
    undo = Buttons.plain("Undo", "undo-trace", model::undo);
    more.setName("trace-more");
    more.getAccessibleContext().setAccessibleName("More to do with this trace");
    causes.setName("look-causes");
    causes.setMnemonic('C');
    causes.setToolTipText("Likeliest causes, and your answers so far");
    causes.addActionListener(e -> showCauses.accept(causes.isSelected()));
    Keys.focused(causes, "ENTER", causes::doClick);
    aspects.onChange(() -> causes.setSelected(false));
    arrange();
  }

  /**
   * Arranges itself for the room there is.
   *
   * @param little whether the place is low
   * @param behind whether causes and answers are behind a button
   */
  void fit(boolean little, boolean behind) {
    tight = little;
    narrow = behind;
    arrange();
  }

  private void arrange() {
    removeAll();
    boolean roomy = !tight && (getWidth() == 0 || getWidth() >= UIScale.scale(ONE_LINE));
    if (roomy) {
      add(what);
      Row line = Row.wrapping(GAP, looks, undo);
      buttons.forEach(line::add);
      add(line);
    } else if (narrow) {
      add(Row.wrapping(GAP, looks, causes, more));
    } else {
      add(Row.growing(GAP, 0, what, looks, undo, more));
    }
    revalidate();
    repaint();
  }

  private void open() {
    JPopupMenu menu = new JPopupMenu("More");
    menu.add(Buttons.item(undo));
    buttons.forEach(button -> menu.add(Buttons.item(button)));
    menu.show(more, 0, more.getHeight());
  }

  /** Shows that the step is looked at, not the causes. */
  void stepIsShown() {
    causes.setSelected(false);
  }

  void refresh(String title) {
    if (!what.getText().equals(title)) {
      what.setText(title);
    }
    looks.refresh();
    undo.setEnabled(model.undoes().isPresent() || model.isWorking());
    String words = model.undoes().map(done -> "Undo " + done).orElse("Undo");
    undo.setToolTipText(words + " (Ctrl+Z)");
    undo.getAccessibleContext().setAccessibleName(words);
  }
}
