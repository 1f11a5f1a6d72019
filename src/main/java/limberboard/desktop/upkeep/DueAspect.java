package limberboard.desktop.upkeep;

import java.awt.BorderLayout;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.Phase;
import limberboard.library.Skill;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;

/** What is due, in groups, with the selected work in full beside it. */
final class DueAspect implements UpkeepAspect {
  private static final int LEAST_WIDTH = 760;
  private final DueModel model;
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final CardList<Due> list = new CardList<>("What is due", this::card);
  private final Wrapped summary = Text.plain("");
  private final Wrapped nothing = Text.reading("");
  private final JButton coming = Buttons.plain("", this::turnComing);
  private final DueDetails details;
  private final Sides sides;
  private boolean refreshing;

  /** The aspect. */
  DueAspect(UpkeepTools tools) {
    model = new DueModel(tools.upkeep(), tools.log());
    details = new DueDetails(model, tools.navigator()::openPage);
    panel.setOpaque(false);
    list.setName("due");
    list.framed().onChoose(this::choose);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.addListSelectionListener(
        e -> {
          if (!refreshing && !e.getValueIsAdjusting()) {
            list.selected().ifPresent(due -> model.select(due.id()));
          }
        });
    coming.setName("due-coming");
    sides =
        new Sides(
            LEAST_WIDTH,
            "What is due",
            left(),
            "The work",
            details,
            "upkeep-due",
            0.55,
            tools.dividers());
    panel.add(sides);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent left() {
    Column head = new Column(6).padded(0, 0, 0, 6);
    head.add(summary);
    head.add(Row.wrapping(8, who(), phase()));
    head.add(nothing);
    Column foot = new Column(0).padded(6, 2, 2, 6);
    foot.add(Row.wrapping(8, coming));
    return new StackedList(head, list, foot);
  }

  private JComponent who() {
    return choice(
        "due-who",
        "Who does it",
        Skill.values(),
        DueWords::who,
        who -> model.filter(new Filter(who, model.filter().phase())));
  }

  private JComponent phase() {
    return choice(
        "due-phase",
        "When in the year",
        Phase.values(),
        DueWords::when,
        phase -> model.filter(new Filter(model.filter().who(), phase)));
  }

  private static <T> JComboBox<Optional<T>> choice(
      String name,
      String accessibleName,
      T[] values,
      Function<Optional<T>, String> words,
      java.util.function.Consumer<Optional<T>> choose) {
    JComboBox<Optional<T>> box = new JComboBox<>();
    Stream.concat(Stream.of(Optional.<T>empty()), Arrays.stream(values).map(Optional::of))
        .forEach(box::addItem);
    box.setName(name);
    box.getAccessibleContext().setAccessibleName(accessibleName);
    box.setRenderer(new Spoken<>(words));
    box.addActionListener(e -> choose.accept(box.getItemAt(box.getSelectedIndex())));
    return box;
  }

  /** Values in words. */
  private static final class Spoken<T> extends DefaultListCellRenderer {
    private final transient Function<Optional<T>, String> words;

    Spoken(Function<Optional<T>, String> words) {
      this.words = words;
    }

    @Override
    @SuppressWarnings("unchecked")
    public java.awt.Component getListCellRendererComponent(
        javax.swing.JList<?> list, Object value, int index, boolean selected, boolean focused) {
      return super.getListCellRendererComponent(
          list, words.apply((Optional<T>) value), index, selected, focused);
    }
  }

  private Card card(Due due) {
    DueWords words = new DueWords(model.upkeep().day());
    Card card =
        Card.of(due.title(), words.why(due))
            .ofKind(words.state(due))
            .noting(words.plan(due) + ". " + DueWords.effort(due) + ".");
    return beginsGroup(due)
        ? card.under(DueWords.heading(due.group()) + " (" + model.count(due.group()) + ")")
        : card;
  }

  private boolean beginsGroup(Due due) {
    List<Due> rows = list.entries();
    int at = rows.indexOf(due);
    return at == 0 || (at > 0 && rows.get(at - 1).group() != due.group());
  }

  /** Where there is room for only one of them, the work comes to the front. */
  private void choose(Due due) {
    model.select(due.id());
    sides.showOther();
  }

  private void turnComing() {
    model.showComing(!model.isComingShown());
  }

  private void refresh() {
    refreshing = true;
    List<Due> rows = model.rows();
    if (!list.entries().equals(rows)) {
      list.show(rows);
    }
    Optional<Due> selected = model.selected();
    if (!list.selected().equals(selected)) {
      selected.ifPresentOrElse(due -> list.setSelectedValue(due, true), list::clearSelection);
    }
    int later = model.count(Group.COMING);
    coming.setVisible(later > 0);
    coming.setText(
        model.isComingShown() ? "Hide what comes later" : "Show what comes later (" + later + ")");
    summary.setText(new DueSummary(model).words());
    String empty = new DueSummary(model).nothing();
    nothing.setText(empty);
    nothing.setVisible(!empty.isEmpty());
    refreshing = false;
    panel.revalidate();
    panel.repaint();
  }

  @Override
  public String id() {
    return "due";
  }

  @Override
  public String title() {
    return "Due";
  }

  @Override
  public char mnemonic() {
    return 'D';
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return list.getModel().getSize() == 0
        ? List.of(coming.isVisible() ? coming : panel)
        : List.of(list, details.region());
  }
}
