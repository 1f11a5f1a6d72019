package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.text.Position;

/**
 * A list whose entries are cards of wrapping text. Arrows move, Enter or a click chooses.
 *
 * @param <T> what the entries stand for
 */
public final class CardList<T> extends JList<T> {
  private static final int ANY_HEIGHT = 20;
  private static final int BOX = 40;
  private final transient Function<? super T, Card> cards;
  private transient Consumer<T> chosen = entry -> {};
  private transient BiConsumer<T, Boolean> ticked = (entry, range) -> {};
  private boolean ticks;

  /**
   * An empty list.
   *
   * @param name what the list is, for somebody who listens to it
   * @param card what an entry shows
   */
  public CardList(String name, Function<? super T, Card> card) {
    super(new DefaultListModel<>());
    cards = card;
    setCellRenderer(new CardRenderer<>(card));
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setOpaque(false);
    getAccessibleContext().setAccessibleName(name);
    Keys.focused(this, "ENTER", this::chooseSelected);
    CardCopies.on(this, card);
    addMouseListener(new Clicks());
    addFocusListener(new Ring());
    When.widened(this, this::widened);
  }

  /** Puts each entry on a sheet of its own, so that it looks like something to press. */
  public CardList<T> framed() {
    ((CardRenderer<?>) getCellRenderer()).frame();
    return this;
  }

  /** Says what happens when an entry is chosen. */
  public CardList<T> onChoose(Consumer<T> action) {
    chosen = action;
    return this;
  }

  /**
   * Says what happens when an entry's box is ticked, with Space or by a click on it; with Shift
   * held, the second argument is true, and all from the last ticked one on are meant.
   */
  public CardList<T> onTick(BiConsumer<T, Boolean> action) {
    ticked = action;
    Keys.focused(this, "SPACE", () -> orFirst().ifPresent(entry -> action.accept(entry, false)));
    Keys.focused(
        this, "shift SPACE", () -> orFirst().ifPresent(entry -> action.accept(entry, true)));
    ticks = true;
    return this;
  }

  /** The next entry with a word that begins with what was typed. */
  @Override
  public int getNextMatch(String typed, int start, Position.Bias bias) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    int size = getModel().getSize();
    for (int i = 0; i < size && !wanted.isEmpty(); i++) {
      int at = Math.floorMod(start + (bias == Position.Bias.Forward ? i : -i), size);
      String title = cards.apply(getModel().getElementAt(at)).title().toLowerCase(Locale.ROOT);
      if (title.startsWith(wanted) || title.contains(" " + wanted)) {
        return at;
      }
    }
    return -1;
  }

  /** Shows other entries; an entry that was selected and is still there stays selected. */
  public void show(List<T> entries) {
    T before = getSelectedValue();
    DefaultListModel<T> model = new DefaultListModel<>();
    model.addAll(entries);
    setModel(model);
    if (before != null) {
      setSelectedValue(before, false);
    }
  }

  /** The entries now shown. */
  public List<T> entries() {
    return java.util.stream.IntStream.range(0, getModel().getSize())
        .mapToObj(getModel()::getElementAt)
        .toList();
  }

  /** Selects the next or an earlier entry, staying inside the list. */
  public void move(int by) {
    int last = getModel().getSize() - 1;
    if (last >= 0) {
      int to = Math.max(0, Math.min(last, getSelectedIndex() + by));
      setSelectedIndex(to);
      ensureIndexIsVisible(to);
    }
  }

  /** The selected entry. */
  public Optional<T> selected() {
    return Optional.ofNullable(getSelectedValue());
  }

  /** Chooses the selected entry, or the first when none is selected. */
  public void chooseSelected() {
    orFirst().ifPresent(chosen);
  }

  /** The selected entry, or the first, which is then selected. */
  private Optional<T> orFirst() {
    if (getSelectedIndex() < 0 && getModel().getSize() > 0) {
      setSelectedIndex(0);
      ensureIndexIsVisible(0);
    }
    return selected();
  }

  /** This list in a scroll pane without a frame. */
  public JScrollPane scrolling() {
    return Scrolling.of(this);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  private final class Clicks extends MouseAdapter {
    @Override
    public void mouseClicked(MouseEvent e) {
      if (!SwingUtilities.isLeftMouseButton(e)) {
        return;
      }
      int index = locationToIndex(e.getPoint());
      if (index >= 0 && getCellBounds(index, index).contains(e.getPoint())) {
        if (ticks && e.getX() < UIScale.scale(BOX)) {
          ticked.accept(getModel().getElementAt(index), e.isShiftDown());
        } else {
          chooseSelected();
        }
      }
    }
  }

  /** Where nothing is selected, the first entry has the ring of what has the focus. */
  private final class Ring implements FocusListener {
    @Override
    public void focusGained(FocusEvent e) {
      if (isSelectionEmpty() && getModel().getSize() > 0) {
        ensureIndexIsVisible(0);
      }
      repaint();
    }

    @Override
    public void focusLost(FocusEvent e) {
      repaint();
    }
  }

  /** Asks every entry anew how high it is. */
  public void refreshHeights() {
    setFixedCellHeight(ANY_HEIGHT);
    setFixedCellHeight(-1);
  }

  /** The list keeps heights, which depend on the width, until told that they have changed. */
  private void widened() {
    refreshHeights();
    if (getSelectedIndex() >= 0) {
      ensureIndexIsVisible(getSelectedIndex());
    }
  }
}
