package limberboard.desktop.workspace.share;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.sharing.merge.Choice;
import limberboard.sharing.merge.Conflict;
import limberboard.words.CountWords;

/** What both copies changed: each part with both texts side by side, to be chosen between. */
final class SettlePanel extends JPanel {
  private static final int LEAST = 820;
  private static final int BESIDE = 520;
  private final transient SharingModel model;
  private final CardList<Conflict> list;
  private final SideText ours = new SideText("merge-ours", "Yours");
  private final SideText theirs = new SideText("merge-theirs", "Theirs");
  private final Wrapped head = Text.heading("");
  private final Wrapped before = Text.quiet("");
  private final Wrapped words = Text.plain("");
  private final JPanel both = new JPanel(new GridLayout(1, 2, 12, 8));
  private final JButton merge;
  private final JButton leave;
  private final Map<Choice, JToggleButton> buttons = new EnumMap<>(Choice.class);
  private transient Optional<Conflict> shown = Optional.empty();

  SettlePanel(SharingModel model, Divider.Memory dividers) {
    super(new BorderLayout(0, 8));
    this.model = model;
    setOpaque(false);
    list = new CardList<Conflict>("Parts that both changed", this::card).onChoose(this::chosen);
    list.setName("merge-parts");
    list.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting()) {
            list.selected()
                .filter(each -> model.current().filter(each::equals).isEmpty())
                .ifPresent(model::look);
          }
        });
    merge = Buttons.main("Merge", "merge-do", model::settle);
    leave = Buttons.plain("Leave it for now", "merge-leave", model::leave);
    Column above = new Column(6).padded(0, 6, 0, 6).atMost(900);
    above.add(Text.title("Both copies changed the same"));
    above.add(words);
    add(above, BorderLayout.NORTH);
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.add(list.scrolling(), BorderLayout.CENTER);
    add(
        new Sides(LEAST, "Parts", left, "Both texts", right(), "workspace-merge", 0.3, dividers),
        BorderLayout.CENTER);
    Column foot = new Column(0).padded(0, 6, 2, 6);
    foot.add(Row.wrapping(10, merge, leave));
    add(foot, BorderLayout.SOUTH);
    Keys.within(this, "control ENTER", merge::doClick);
    key("1", Choice.OURS);
    key("2", Choice.THEIRS);
    key("3", Choice.BOTH);
    key("4", Choice.BEFORE);
  }

  private void key(String key, Choice choice) {
    Keys.within(this, key, () -> buttons.get(choice).doClick());
    Keys.within(this, "NUMPAD" + key, () -> buttons.get(choice).doClick());
  }

  private JComponent right() {
    JPanel right = new JPanel(new BorderLayout(0, 8));
    right.setOpaque(false);
    right.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 4));
    Column above = new Column(4);
    above.add(head);
    above.add(before);
    right.add(above, BorderLayout.NORTH);
    both.setOpaque(false);
    both.add(side("Yours", ours));
    both.add(side("Theirs", theirs));
    When.widened(
        both,
        () -> {
          boolean beside = both.getWidth() >= UIScale.scale(BESIDE);
          both.setLayout(beside ? new GridLayout(1, 2, 12, 8) : new GridLayout(2, 1, 12, 8));
          both.revalidate();
        });
    right.add(both, BorderLayout.CENTER);
    Column foot = new Column(0).padded(0, 0, 4, 0);
    foot.add(
        Row.wrapping(
            8,
            button(Choice.OURS, "Yours (1)", "What stands in this copy holds"),
            button(Choice.THEIRS, "Theirs (2)", "What the other copy has holds"),
            button(Choice.BOTH, "Both (3)", "Both paragraphs hold, yours first"),
            button(Choice.BEFORE, "As before (4)", "What stood there before either change holds")));
    right.add(foot, BorderLayout.SOUTH);
    return right;
  }

  private static JComponent side(String title, SideText text) {
    JPanel panel = new JPanel(new BorderLayout(0, 4));
    panel.setOpaque(false);
    panel.add(Text.caption(title), BorderLayout.NORTH);
    JScrollPane scroller = new JScrollPane(text);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    panel.add(scroller, BorderLayout.CENTER);
    return panel;
  }

  private JToggleButton button(Choice choice, String words, String tip) {
    JToggleButton button = new JToggleButton(words);
    button.setName("merge-" + choice.word());
    button.setToolTipText(tip);
    button.addActionListener(e -> model.choose(choice));
    Keys.focused(button, "ENTER", button::doClick);
    buttons.put(choice, button);
    return button;
  }

  private void chosen(Conflict conflict) {
    model.look(conflict);
    Sides.goTo(buttons.get(Choice.OURS));
  }

  private Card card(Conflict conflict) {
    Card card =
        Card.of(
            ConflictWords.where(conflict),
            model.choice(conflict).map(ConflictWords::chosen).orElse("to be chosen"));
    int at = model.conflicts().indexOf(conflict);
    boolean first = at == 0 || !model.conflicts().get(at - 1).file().equals(conflict.file());
    Card settled = model.choice(conflict).isPresent() ? card.second() : card;
    return first ? settled.under(conflict.file()) : settled;
  }

  void refresh() {
    if (!list.entries().equals(model.conflicts())) {
      list.show(model.conflicts());
    }
    list.repaint();
    long open = model.conflicts().stream().filter(each -> model.choice(each).isEmpty()).count();
    words.setText(
        open == 0
            ? "Everything is chosen. Merge puts it together; no file was changed until now."
            : CountWords.of((int) open, "part")
                + " to choose. For each, press 1 for yours, 2 for theirs, 3 for both, 4 for as it"
                + " was. No file is changed before all are chosen.");
    merge.setEnabled(model.isSettled());
    model.current().ifPresent(this::show);
  }

  private void show(Conflict conflict) {
    if (list.selected().filter(conflict::equals).isEmpty()) {
      list.setSelectedValue(conflict, true);
    }
    buttons.forEach(
        (choice, button) ->
            button.setSelected(model.choice(conflict).filter(choice::equals).isPresent()));
    buttons.get(Choice.BOTH).setEnabled(conflict.mayBeBoth());
    if (shown.filter(conflict::equals).isEmpty()) {
      shown = Optional.of(conflict);
      head.setText(ConflictWords.where(conflict) + ", in " + conflict.file());
      before.setText(
          conflict.before().isBlank()
              ? "Nothing stood there before."
              : "Before: " + conflict.before().strip());
      ours.show(conflict.ours(), ConflictWords.differing(conflict.ours(), conflict.theirs()));
      theirs.show(conflict.theirs(), ConflictWords.differing(conflict.theirs(), conflict.ours()));
    }
  }

  List<JComponent> regions() {
    return List.of(list, ours, theirs, buttons.get(Choice.OURS), merge);
  }
}
