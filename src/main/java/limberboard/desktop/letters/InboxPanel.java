package limberboard.desktop.letters;

import java.awt.BorderLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Scrolling;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.words.CountWords;

/** The inbox: the letters, which of them are shown, and how far looking at them has come. */
final class InboxPanel extends JPanel {
  private static final int FIELD = 8;
  private static final String READ_EACH =
      "The program misses danger in some letters. Read each for it.";
  private final transient InboxModel model;
  private final InboxList list;
  private final JTextField find = new JTextField(FIELD);
  private final JComboBox<InboxFilter> filter = new JComboBox<>(InboxFilter.values());
  private final Wrapped count = Text.quiet("");
  private final Wrapped progress = Text.quiet("");

  /**
   * A panel.
   *
   * @param model what is shown
   * @param files asks for letters to be opened
   * @param paste takes a letter from the clipboard
   * @param read goes to the letter that is open
   * @param clicked is told when a letter is clicked
   * @param figures shows what recorded cases add up to
   * @param next shows what to write next
   */
  InboxPanel(
      InboxModel model,
      Runnable files,
      Runnable paste,
      Runnable read,
      Runnable clicked,
      Runnable figures,
      Runnable next) {
    super(new BorderLayout(0, 6));
    this.model = model;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 14, 10, 6));
    list = new InboxList(model::choose);
    Keys.focused(list, "ENTER", read);
    Keys.focused(list, "control V", paste);
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            clicked.run();
          }
        });
    filter.setName("inbox-filter");
    filter.setRenderer(new ItemWords<>(InboxFilter::title));
    filter.getAccessibleContext().setAccessibleName("Which letters");
    filter.addActionListener(e -> model.filter((InboxFilter) filter.getSelectedItem()));
    find.setName("inbox-find");
    find.getAccessibleContext().setAccessibleName("Find in the letters");
    find.putClientProperty("JTextField.placeholderText", "Find in them");
    find.putClientProperty("JTextField.showClearButton", true);
    When.typed(find, () -> model.words(find.getText()));
    Keys.focused(find, "ENTER", list::requestFocusInWindow);
    Keys.focused(find, "DOWN", list::requestFocusInWindow);
    JButton open =
        Buttons.plain(
            "Open file …", "letter-open", "A letter that a mail program has saved (.eml)", files);
    JButton pasted =
        Buttons.plain(
            "Paste a letter", "letter-paste", "The text that you have copied elsewhere", paste);
    JButton counts = Buttons.link("Statistics", figures);
    counts.setName("letter-figures");
    counts.setToolTipText("What the recorded cases add up to");
    Column above = new Column(6);
    JButton write = Buttons.link("What to write", next);
    write.setName("letter-next");
    write.setToolTipText("What to write next, by cases, letters and searches");
    above.add(Row.worded(8, Text.title("Letters"), write, counts));
    above.add(Row.wrapping(6, open, pasted));
    above.add(Row.growing(6, 1, filter, find));
    above.add(count);
    Column below = new Column(2);
    below.add(progress);
    below.add(Text.quiet(READ_EACH));
    add(above, BorderLayout.NORTH);
    add(Scrolling.of(list), BorderLayout.CENTER);
    add(below, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    list.show(model.shown(), model.chosen().orElse(""));
    String told = model.progress();
    if (!progress.getText().equals(told)) {
      progress.setText(told);
      progress.setVisible(!told.isEmpty());
    }
    String urgent = model.urgent() == 0 ? "" : " " + model.urgent() + " said to be urgent.";
    String words =
        model.shown().isEmpty() && model.size() > 0
            ? "None of " + CountWords.of(model.size(), "letter") + " is shown."
            : model.shown().size() + " of " + CountWords.of(model.size(), "letter") + "." + urgent;
    if (!count.getText().equals(words)) {
      count.setText(words);
      revalidate();
    }
  }

  /** The list. */
  JComponent letters() {
    return list;
  }

  /** Asks for words to find. */
  void find() {
    find.requestFocusInWindow();
    find.selectAll();
  }

  /** Goes on to the next letter that is shown, or to the one before. */
  void next(boolean forward) {
    int last = list.getModel().getSize() - 1;
    if (last >= 0) {
      int to = Math.max(0, Math.min(last, list.getSelectedIndex() + (forward ? 1 : -1)));
      list.setSelectedIndex(to);
      list.ensureIndexIsVisible(to);
    }
  }

  List<JComponent> regions() {
    return List.of(list);
  }
}
