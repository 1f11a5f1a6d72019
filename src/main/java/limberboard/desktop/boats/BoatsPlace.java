package limberboard.desktop.boats;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;

/** The place where boats are entered and kept. */
public final class BoatsPlace implements Place {
  private static final int ICON = 26;
  private static final int LEAST_WIDTH = 680;
  private final BoatFormModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final Wrapped nothing = Text.reading("");
  private final BoatListPanel list;
  private final BoatForm form;
  private final BesidePanel beside;
  private final Sides sides;
  private boolean begun;

  /**
   * The place.
   *
   * @param tools what places are made with
   * @param model what is shown
   */
  public BoatsPlace(PlaceTools tools, BoatFormModel model) {
    this.model = model;
    list = new BoatListPanel(model);
    form = new BoatForm(model, tools.navigator()::beginLog);
    beside =
        new BesidePanel(model, tools.drawings(), new Latest(tools.background()), tools.dividers());
    Column empty = new Column(0).padded(40, 40, 40, 40);
    empty.add(nothing);
    shown.add(empty, "nothing");
    sides =
        new Sides(
            LEAST_WIDTH,
            "Particulars",
            form,
            "Drawing and log",
            beside,
            "boats-beside",
            0.48,
            tools.dividers());
    shown.add(sides, "form");
    panel.add(Divider.beside("boats-list", list, shown, 0.2, tools.dividers()));
    model.askUnsaved(this::ask);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    cards.show(shown, model.form().hasForm() ? "form" : "nothing");
    nothing.setText(
        model.isRead()
            ? "No boat has been entered yet. Press “New boat”: its model, year and what is fitted"
                + " decide what is right for it."
            : "Reading the boats …");
    if (model.form().isNew() && !begun) {
      sides.showMain();
      SwingUtilities.invokeLater(form::begin);
    }
    begun = model.form().isNew();
  }

  private UnsavedQuestion.Answer ask() {
    String[] answers = {"Save", "Drop changes", "Stay"};
    int answer =
        JOptionPane.showOptionDialog(
            panel,
            "There are unsaved changes to this boat.",
            "Unsaved changes",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[0]);
    return switch (answer) {
      case 0 -> UnsavedQuestion.Answer.SAVE;
      case 1 -> UnsavedQuestion.Answer.DROP;
      default -> UnsavedQuestion.Answer.STAY;
    };
  }

  @Override
  public boolean mayLeave(Runnable then) {
    return model.mayLeave(then);
  }

  @Override
  public boolean mayClose(Runnable then) {
    return model.mayLeave(then);
  }

  @Override
  public Name name() {
    return new Name("boats", "Boats", 'B');
  }

  @Override
  public Icon icon() {
    return LineIcon.boats(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(list.region(), form.region(), beside.region());
  }
}
