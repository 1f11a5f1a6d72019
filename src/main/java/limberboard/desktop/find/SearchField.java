package limberboard.desktop.find;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.EventQueue;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.JTextField;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.When;

/**
 * The search field. Hits appear below it as one types; arrows move through them, Enter opens the
 * selected or the first one, Escape closes them.
 */
public final class SearchField extends JTextField {
  private final transient SearchModel model;
  private final transient Hits hits;
  private final transient Consumer<Found> open;

  /**
   * A field.
   *
   * @param model what is typed and found
   * @param open opens something that was found
   */
  public SearchField(SearchModel model, Consumer<Found> open) {
    this.model = model;
    this.open = open;
    this.hits = new Hits(model, this, this::choose);
    setName("search");
    putClientProperty(
        FlatClientProperties.PLACEHOLDER_TEXT,
        "Search everything: a leak, a part, a boat; or paste a letter");
    putClientProperty(FlatClientProperties.TEXT_FIELD_LEADING_ICON, LineIcon.search(18));
    putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
    getAccessibleContext().setAccessibleName("Search everything");
    setToolTipText("Search everything (" + Keys.spoken("control L") + ")");
    When.typed(this, this::typed);
    addFocusListener(new Leaving());
    Keys.focused(this, "DOWN", () -> hits.move(1));
    Keys.focused(this, "UP", () -> hits.move(-1));
    Keys.focused(this, "ENTER", this::enter);
    Keys.focused(this, "ESCAPE", this::escape);
  }

  private void enter() {
    hits.selected().ifPresentOrElse(this::choose, () -> model.openFirst(this::choose));
  }

  private void escape() {
    if (hits.isShown()) {
      hits.hide();
    } else {
      setText("");
    }
  }

  private void choose(Found found) {
    if (found.target() instanceof Found.MentionedBoat) {
      open.accept(found);
      EventQueue.invokeLater(this::stay);
    } else {
      model.opened();
      hits.hide();
      open.accept(found);
    }
  }

  /** Goes on with what was found, wherever the focus went meanwhile. */
  private void stay() {
    requestFocusInWindow();
    hits.begin();
    hits.refresh();
  }

  private void typed() {
    hits.begin();
    model.type(getText());
  }

  private final class Leaving extends FocusAdapter {
    @Override
    public void focusLost(FocusEvent e) {
      if (!hits.contains(e.getOppositeComponent())) {
        hits.hide();
        if (!e.isTemporary()) {
          model.leave();
        }
      }
    }

    @Override
    public void focusGained(FocusEvent e) {
      selectAll();
    }
  }
}
