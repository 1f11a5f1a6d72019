package limberboard.desktop.upkeep.sheets;

import java.awt.CardLayout;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Span;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.upkeep.due.DueDetails;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.due.Together;
import limberboard.desktop.upkeep.sheets.ListModel.Line;
import limberboard.desktop.upkeep.state.TickedWork;

/**
 * The lines of a list to be ticked, in the list's order, and the form that writes them. Ticks are
 * those of what is due.
 */
final class ListTicks extends JPanel {
  private final transient Ticked ticked;
  private final transient DueModel due;
  private final CardLayout cards = new CardLayout();
  private final CardList<Line> list = new CardList<>("Lines of the list", this::card);
  private final Together together;
  private final DueDetails details;
  private String last = "";

  /**
   * What is ticked off.
   *
   * @param name begins the names of the list and the buttons
   * @param words what stands above the lines
   * @param sheet tells when the lines change
   * @param lines the lines, in their order
   */
  record Ticked(String name, String words, SheetModel<?, ?> sheet, Supplier<List<Line>> lines) {}

  /**
   * Ticks of a list.
   *
   * @param openPage opens a page
   */
  ListTicks(ListModel model, DueModel due, TickedWork wanted, Consumer<String> openPage) {
    this(
        new Ticked(
            "list",
            "In the order of the walk round the boat: what is opened is opened once. Due has the"
                + " same work by urgency. Space ticks, Shift+Space up to here, Enter opens the"
                + " page.",
            model.sheet(),
            model::lines),
        due,
        wanted,
        openPage);
  }

  /**
   * Ticks.
   *
   * @param openPage opens a page
   * @param buttons what can be done with all lines
   */
  ListTicks(
      Ticked ticked,
      DueModel due,
      TickedWork wanted,
      Consumer<String> openPage,
      JButton... buttons) {
    this.ticked = ticked;
    this.due = due;
    setLayout(cards);
    setOpaque(false);
    details = new DueDetails(due, openPage);
    together =
        new Together(
            ticked.name(),
            this::mark,
            () -> wanted.shop(due.ticked().stream().map(one -> one.work().id()).toList()),
            due::untick);
    list.setName(ticked.name() + "-lines");
    list.framed().onTick(this::tick).onChoose(line -> openPage.accept(line.page()));
    Column head = new Column(6).padded(4, 8, 0, 6);
    head.add(Text.heading("Tick off"));
    head.add(Text.quiet(ticked.words()));
    if (buttons.length > 0) {
      head.add(Row.wrapping(8, buttons));
    }
    Column foot = new Column(0).padded(6, 8, 2, 6);
    foot.add(together);
    add(new StackedList(head, list, foot), "lines");
    add(details, "form");
    due.afterWriting(this::back);
    due.onChange(this::refresh);
    ticked.sheet().onChange(this::refresh);
    refresh();
  }

  /** Shows the first line. */
  void toTop() {
    list.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
  }

  JComponent region() {
    return list;
  }

  private Card card(Line line) {
    Card card = Card.of(line.title(), "").noting(line.facts()).ticked(due.isTicked(line.due()));
    return line.part().isEmpty() ? card : card.under(line.part());
  }

  private void tick(Line line, boolean range) {
    List<String> ids = ticked.lines().get().stream().map(Line::due).toList();
    if (range && ids.contains(last)) {
      due.tickAll(Span.of(ids, last, line.due()));
    } else {
      due.tick(line.due());
    }
    last = line.due();
  }

  private void mark() {
    due.markTicked();
    details.focusForm();
  }

  private void back() {
    if (isShowing()) {
      Later.focus(list);
    }
  }

  private void refresh() {
    if (!list.entries().equals(ticked.lines().get())) {
      list.show(ticked.lines().get());
    }
    together.show(due.ticked(), due.tickedMinutes());
    cards.show(this, due.form().isPresent() ? "form" : "lines");
    list.repaint();
    revalidate();
  }
}
