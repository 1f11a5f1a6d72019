package limberboard.desktop.workspace.history;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.read.SheetReader;
import limberboard.desktop.workspace.history.PageVersions.Entry;
import limberboard.words.CountWords;
import limberboard.words.DayText;

/** Who changed a page, when and how, and each version beside it. */
public final class PageHistoryView implements View {
  private static final int LEAST = 760;
  private final HistoryModel model;
  private final PlaceTools tools;
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final CardList<Entry> list;
  private final SheetReader reader;
  private final Sides sides;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.quiet("");
  private final Wrapped told = Text.reading("");
  private boolean attends;
  private final Wrapped dayWords = Text.quiet("");
  private final JTextField day = new JTextField(11);
  private final JButton begin;
  private final JButton again;
  private final JButton restore;
  private final JButton read;
  private final Map<VersionLook, JToggleButton> looks = new EnumMap<>(VersionLook.class);

  /** A view of the model. */
  public PageHistoryView(HistoryModel model, PlaceTools tools) {
    this.model = model;
    this.tools = tools;
    list = new CardList<Entry>("Versions", this::card).onChoose(this::chosen);
    list.setName("history-versions");
    list.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting()) {
            list.selected().filter(entry -> !isChosen(entry)).ifPresent(model::choose);
          }
        });
    reader = tools.sheets(tools.navigator()::openPage).inPageColumn();
    begin =
        Buttons.main(
            "Begin a history",
            "history-begin",
            () -> {
              attends = true;
              model.begin();
            });
    again = Buttons.plain("Try again", "history-again", model::lookAgain);
    restore = Buttons.plain("Restore this version …", "history-restore", this::restore);
    read = Buttons.plain("Read the page", "history-read", this::readPage);
    sides =
        new Sides(
            LEAST,
            "Versions",
            left(),
            "Version",
            right(),
            "workspace-history",
            0.36,
            tools.dividers());
    panel.setOpaque(false);
    Column alone = new Column(12).padded(30, 20, 20, 20).atMost(640);
    alone.add(told);
    alone.add(Row.wrapping(10, begin, again));
    new FocusedText(told, alone).named("history-told");
    panel.add(alone.scrolling(), "alone");
    panel.add(sides, "versions");
    model.onChange(this::refresh);
    refresh();
  }

  private boolean isChosen(Entry entry) {
    return model.chosen().filter(entry::equals).isPresent();
  }

  private JComponent left() {
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 8));
    Column above = new Column(4).padded(0, 6, 4, 6);
    above.add(title);
    above.add(words);
    left.add(above, BorderLayout.NORTH);
    left.add(list.scrolling(), BorderLayout.CENTER);
    Column below = new Column(4).padded(4, 6, 0, 6);
    day.setName("history-day");
    day.getAccessibleContext().setAccessibleName("Day on which the page is to be seen");
    day.setToolTipText("The page as it stood on this day: 20 May 2026, or 20.5.2026. Press Enter.");
    Keys.focused(day, "ENTER", this::showDay);
    below.add(Row.wrapping(6, Text.label("As it stood on"), day));
    below.add(dayWords);
    left.add(below, BorderLayout.SOUTH);
    dayWords.setVisible(false);
    Keys.focused(list, "RIGHT", () -> step(1));
    Keys.focused(list, "LEFT", () -> step(-1));
    return left;
  }

  private JComponent right() {
    JPanel right = new JPanel(new BorderLayout(0, 6));
    right.setOpaque(false);
    right.setBorder(BorderFactory.createEmptyBorder(4, 8, 0, 0));
    List<JComponent> controls = new ArrayList<>();
    ButtonGroup group = new ButtonGroup();
    for (VersionLook look : VersionLook.values()) {
      JToggleButton button = new JToggleButton(look.title());
      button.setName("history-" + look.name());
      button.setToolTipText("In the list, the right and left arrows go through these");
      button.addActionListener(e -> model.look(look));
      Keys.focused(button, "ENTER", button::doClick);
      group.add(button);
      looks.put(look, button);
      controls.add(button);
    }
    controls.add(restore);
    controls.add(read);
    Column above = new Column(0).padded(0, 2, 0, 2);
    above.add(Row.wrapping(8, controls.toArray(JComponent[]::new)));
    right.add(above, BorderLayout.NORTH);
    right.add(reader.pane(), BorderLayout.CENTER);
    return right;
  }

  private void step(int by) {
    VersionLook[] all = VersionLook.values();
    model.look(all[Math.floorMod(model.look().ordinal() + by, all.length)]);
  }

  private void chosen(Entry entry) {
    if (!isChosen(entry)) {
      model.choose(entry);
    }
    sides.showOther();
    reader.pane().region().requestFocusInWindow();
  }

  private void readPage() {
    model.page().ifPresent(tools.navigator()::openPage);
  }

  private void showDay() {
    DayText.Read typed = new DayText(tools.session().today()).read(day.getText());
    String wrong = typed.day().map(on -> model.on(on).orElse("")).orElse(typed.why());
    dayWords.setText(wrong);
    dayWords.setVisible(!wrong.isEmpty());
    if (wrong.isEmpty()) {
      sides.showOther();
    }
  }

  /** Asks first; the restored version is a new one. */
  private void restore() {
    Object[] answers = {"Leave it", "Restore it"};
    String which = model.chosen().map(each -> VersionWords.which(each.version())).orElse("");
    int answer =
        JOptionPane.showOptionDialog(
            panel,
            "The page “"
                + model.title()
                + "” will read as it stood after this version:\n"
                + which
                + "\nThat becomes a new version. What stands there now is kept in the history.",
            "Restore a version",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[1]);
    if (answer == 1) {
      model.restore();
    }
  }

  private Card card(Entry entry) {
    Card card =
        Card.of(entry.version().said(), String.join("; ", entry.changes()))
            .noting(VersionWords.when(entry.version().when()) + ", " + entry.version().who());
    return entry.version().isThere() ? card : card.second();
  }

  private void refresh() {
    boolean shown = model.versions().isPresent() && model.trouble().isEmpty();
    cards.show(panel, shown ? "versions" : "alone");
    told.setText(alone());
    begin.setVisible(model.stage() == HistoryStage.NO_HISTORY);
    again.setVisible(model.stage() == HistoryStage.TROUBLE);
    title.setText(model.title());
    words.setText(model.versions().map(PageHistoryView::count).orElse(""));
    List<Entry> entries = model.versions().map(PageVersions::entries).orElse(List.of());
    if (!entries.equals(list.entries())) {
      list.show(entries);
    }
    model
        .chosen()
        .filter(entry -> list.selected().filter(entry::equals).isEmpty())
        .ifPresent(this::select);
    looks.get(model.look()).setSelected(true);
    restore.setEnabled(model.canRestore());
    model.sheet().ifPresentOrElse(reader::show, reader::clear);
    panel.revalidate();
    panel.repaint();
    goWhereItIsRead();
  }

  /** Once its history is read, the focus goes where it is looked at. */
  public void attend() {
    attends = true;
    goWhereItIsRead();
  }

  private void goWhereItIsRead() {
    if (attends && model.stage() != HistoryStage.READING && panel.isShowing()) {
      attends = false;
      Later.run(() -> Sides.goTo(regions().get(0)));
    }
  }

  private void select(Entry entry) {
    list.setSelectedValue(entry, true);
  }

  private static String count(PageVersions read) {
    return CountWords.of(read.entries().size(), "version")
        + ", the latest first."
        + (read.unrecorded() ? " The file has changes that are in no version yet." : "");
  }

  private String alone() {
    return switch (model.stage()) {
      case NONE ->
          "Open a page and press Ctrl+H there: then this says who changed it, when and how, and"
              + " brings earlier versions back.";
      case READING -> "Reading the history …";
      case NO_HISTORY ->
          "This workspace has no history yet. With one, each page’s versions are kept: who changed"
              + " what, when, and what stood there before. It is an ordinary Git repository in the"
              + " workspace’s folder; nothing leaves this machine.";
      case READ, TROUBLE -> model.trouble();
    };
  }

  @Override
  public Name name() {
    return new Name("history", "History", 'H');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return model.versions().isPresent() && model.trouble().isEmpty()
        ? List.of(list, reader.pane().region(), day)
        : List.of(begin.isVisible() ? begin : again.isVisible() ? again : told);
  }
}
