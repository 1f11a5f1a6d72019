package limberboard.desktop.upkeep.due;

import java.awt.BorderLayout;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.Papers;
import limberboard.desktop.upkeep.state.DueLine;
import limberboard.desktop.upkeep.state.DueWords;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.desktop.upkeep.timeline.DuePaper;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due.Group;

/** What is due, in groups, with the selected work in full beside it. */
public final class DueAspect implements View {
  private static final int LEAST_WIDTH = 760;
  private final DueModel model;
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final CardList<DueLine> list = new CardList<>("What is due", this::card);
  private final Wrapped summary = Text.plain("");
  private final Wrapped nothing = Text.reading("");
  private final JButton coming = Buttons.plain("", this::turnComing);
  private final DueDetails details;
  private final Papers papers;
  private final JButton print;
  private final Together together;
  private final Map<String, String> headings = new HashMap<>();
  private String lastTicked = "";
  private final Sides sides;
  private boolean refreshing;

  /** The aspect. */
  public DueAspect(UpkeepTools tools, DueModel due, TickedWork wanted) {
    model = due;
    papers = tools.place().papers();
    Runnable printing = () -> new DuePaper(model.upkeep()).give(papers::print);
    print = Buttons.plain("Print …", "due-print", printing);
    details = new DueDetails(model, tools.place().navigator()::openPage);
    together = new Together("due", this::markTicked, () -> shop(wanted), model::untick);
    model.afterWriting(this::back);
    panel.setOpaque(false);
    list.setName("due");
    list.framed().onChoose(this::choose).onTick(this::tick);
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.addListSelectionListener(
        e -> {
          if (!refreshing && !e.getValueIsAdjusting()) {
            list.selected().ifPresent(line -> model.select(line.id()));
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
            tools.place().dividers());
    panel.add(sides);
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent left() {
    Column head = new Column(6).padded(0, 0, 0, 6);
    head.add(summary);
    head.add(Row.wrapping(8, who(), phase(), need()));
    head.add(nothing);
    Column foot = new Column(0).padded(6, 2, 2, 6);
    foot.add(together);
    foot.add(Row.wrapping(8, coming, print));
    return new StackedList(head, list, foot);
  }

  private JComponent who() {
    return choice(
        "due-who",
        "Who does it",
        Skill.values(),
        DueWords::who,
        who -> model.filter(model.filter().by(who)));
  }

  private JComponent phase() {
    return choice(
        "due-phase",
        "When in the year",
        Phase.values(),
        DueWords::when,
        phase -> model.filter(model.filter().in(phase)));
  }

  private JComponent need() {
    return choice(
        "due-need",
        "How much it is needed",
        Need.values(),
        DueWords::need,
        need -> model.filter(model.filter().needed(need)));
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
    box.setRenderer(new ItemWords<>(words));
    box.addActionListener(e -> choose.accept(box.getItemAt(box.getSelectedIndex())));
    return box;
  }

  private Card card(DueLine line) {
    Card card =
        Card.of((line.due().round().isPresent() ? "… " : "") + line.due().title(), line.why())
            .ofKind(line.state())
            .noting(line.when() + ". " + line.effort() + ".")
            .ticked(model.isTicked(line.id()));
    return Optional.ofNullable(headings.get(line.id())).map(card::under).orElse(card);
  }

  /** The headings of the groups, by the line that begins each. */
  private void headings(List<DueLine> lines) {
    headings.clear();
    Group before = null;
    for (DueLine line : lines) {
      Group group = line.group();
      if (group != before) {
        headings.put(line.id(), group.heading() + " (" + model.count(group) + ")");
      }
      before = group;
    }
  }

  private void tick(DueLine line, boolean range) {
    if (range && !lastTicked.isEmpty()) {
      model.tickRange(lastTicked, line.id());
    } else {
      model.tick(line.id());
    }
    lastTicked = line.id();
    list.repaint();
  }

  private void markTicked() {
    model.markTicked();
    sides.showOther();
    details.focusForm();
  }

  /** Where there is room for only one of them, the work comes to the front. */
  private void choose(DueLine line) {
    model.select(line.id());
    sides.showOther();
  }

  /** After writing, the focus is where the person was: in the list, on the next line. */
  private void back() {
    if (panel.isShowing()) {
      sides.showMain();
      Later.focus(list);
    }
  }

  private void shop(TickedWork wanted) {
    wanted.shop(model.ticked().stream().map(due -> due.work().id()).toList());
  }

  private void turnComing() {
    model.showComing(!model.isComingShown());
  }

  private void refresh() {
    refreshing = true;
    List<DueLine> lines = model.lines();
    headings(lines);
    if (!list.entries().equals(lines)) {
      list.show(lines);
    }
    Optional<DueLine> selected = model.selectedLine();
    if (!list.selected().equals(selected)) {
      selected.ifPresentOrElse(line -> list.setSelectedValue(line, true), list::clearSelection);
    }
    int later = model.count(Group.COMING);
    coming.setVisible(later > 0);
    coming.setText(
        model.isComingShown() ? "Hide what comes later" : "Show what comes later (" + later + ")");
    summary.setText(new DueSummary(model).words());
    String empty = new DueSummary(model).nothing();
    nothing.setText(empty);
    nothing.setVisible(!empty.isEmpty());
    together.show(model.ticked(), model.tickedMinutes());
    refreshing = false;
    panel.revalidate();
    panel.repaint();
  }

  @Override
  public Name name() {
    return new Name("due", "Due", 'D');
  }

  @Override
  public Optional<Runnable> print() {
    return Optional.of(() -> new DuePaper(model.upkeep()).give(papers::print));
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
