package limberboard.desktop.workspace.findings;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;
import limberboard.library.page.Page;
import limberboard.words.CountWords;

/** Everything found in the workspace, and beside it the file in question at its line. */
public final class FindingsView implements View {
  private static final int LEAST = 820;
  private final FindingsModel model;
  private final PlaceTools tools;
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final CardList<WorkspaceFinding> list;
  private final JTextField words = new JTextField(14);
  private final ChoiceBox<Optional<FindingKind>> kinds;
  private final Wrapped told = Text.quiet("");
  private final Wrapped about = Text.heading("");
  private final Wrapped right = Text.plain("");
  private final SourceText source;
  private final JButton write;
  private final JButton open;
  private final JButton repair;
  private final JButton readInFull;
  private final ReadMarking marking;
  private final Sides sides;
  private List<Optional<FindingKind>> offered = List.of();

  /** A view of the model. */
  public FindingsView(FindingsModel model, PlaceTools tools, FindingsOutside outside) {
    this.model = model;
    this.tools = tools;
    list = new CardList<WorkspaceFinding>("Findings", this::card).onChoose(each -> showSelected());
    Keys.focused(list, "ENTER", this::write);
    list.setName("findings");
    list.addListSelectionListener(
        e -> {
          if (!e.getValueIsAdjusting()) {
            showSelected();
          }
        });
    kinds =
        new ChoiceBox<>("findings-kind", "Which kind of findings", this::kindWords, model::kind);
    source = new SourceText(outside.folders(), new Latest(tools.background()));
    write = Buttons.plain("Write it here", "finding-write", "Enter: at this line", this::write);
    open = Buttons.plain("Read the page", "finding-open", this::openPage);
    repair = Buttons.main("Repair …", "finding-repair", this::repair);
    readInFull = Buttons.main("I have read it in full …", "finding-read", this::readSelected);
    marking = new ReadMarking(outside);
    sides =
        new Sides(
            LEAST,
            "Findings",
            left(),
            "File",
            right(),
            "workspace-findings",
            0.46,
            tools.dividers());
    panel.setOpaque(false);
    panel.add(sides, BorderLayout.CENTER);
    model.onChange(this::refresh);
    tools.session().onChange(this::lookIfShown);
    When.showing(panel, this::lookIfShown);
    refresh();
  }

  private void lookIfShown() {
    if (panel.isShowing()) {
      model.look();
    }
  }

  private JComponent left() {
    JPanel left = new JPanel(new BorderLayout(0, 6));
    left.setOpaque(false);
    left.setBorder(BorderFactory.createEmptyBorder(4, 0, 0, 8));
    words.setName("findings-filter");
    words.getAccessibleContext().setAccessibleName("Words in the findings");
    words.putClientProperty("JTextField.placeholderText", "Words in them");
    words.setToolTipText("Shows only those in which these words stand");
    When.typed(words, () -> model.filter(words.getText()));
    Keys.focused(words, "DOWN", list::requestFocusInWindow);
    Keys.focused(words, "ENTER", list::requestFocusInWindow);
    Column above = new Column(6).padded(0, 6, 4, 6);
    above.add(Text.title("Findings"));
    above.add(told);
    above.add(Row.wrapping(8, words, kinds));
    left.add(above, BorderLayout.NORTH);
    left.add(list.scrolling(), BorderLayout.CENTER);
    return left;
  }

  private JComponent right() {
    JPanel file = new JPanel(new BorderLayout(0, 6));
    file.setOpaque(false);
    file.setBorder(BorderFactory.createEmptyBorder(4, 8, 0, 0));
    Column above = new Column(6).padded(0, 2, 4, 2);
    above.add(about);
    above.add(right);
    above.add(Row.wrapping(8, repair, readInFull, write, open));
    file.add(above, BorderLayout.NORTH);
    JScrollPane text = new JScrollPane(source);
    text.setBorder(BorderFactory.createEmptyBorder());
    file.add(text, BorderLayout.CENTER);
    return file;
  }

  private String kindWords(Optional<FindingKind> kind) {
    return kind.map(each -> each.words() + " (" + model.count(each) + ")")
        .orElse("all (" + model.count() + ")");
  }

  private Card card(WorkspaceFinding finding) {
    String place =
        finding.file().isEmpty()
            ? "no page yet"
            : finding.file() + (finding.line() > 0 ? ", line " + finding.line() : "");
    Card card = Card.of(finding.what(), finding.right()).ofKind(finding.kind().words());
    return card.noting(place + (finding.repair().isPresent() ? ". One step mends it." : ""));
  }

  /** Goes where the page is written, at the finding's line; to the text of any other file. */
  private void write() {
    Optional<WorkspaceFinding> finding = list.selected();
    if (finding.filter(WorkspaceFinding::isOfPage).isPresent()) {
      tools.navigator().writeLine(finding.get().file(), finding.get().line());
    } else if (finding.filter(each -> !each.file().isEmpty()).isPresent()) {
      Sides.goTo(source);
    }
  }

  private void readSelected() {
    list.selected().flatMap(WorkspaceFinding::page).ifPresent(this::readInFull);
  }

  /** Asks what kind of reader has read a page in full today, and notes that in its header. */
  public void readInFull(String id) {
    Optional<? extends Page<?>> page = tools.session().library().page(id);
    page.ifPresent(
        each ->
            new ReaderDialog(panel)
                .ask(each.title(), marking.lastReader())
                .ifPresent(by -> marking.mark(each.path(), each.title(), by)));
  }

  private void showSelected() {
    Optional<WorkspaceFinding> finding = list.selected();
    about.setText(finding.map(WorkspaceFinding::what).orElse(""));
    right.setText(finding.map(WorkspaceFinding::right).orElse(""));
    repair.setVisible(finding.flatMap(WorkspaceFinding::repair).isPresent());
    readInFull.setVisible(finding.filter(WorkspaceFinding::isToRead).isPresent());
    write.setVisible(finding.filter(WorkspaceFinding::isOfPage).isPresent());
    open.setVisible(finding.flatMap(WorkspaceFinding::page).isPresent());
    finding.ifPresentOrElse(
        each -> source.show(each.file(), each.line()), () -> source.show("", 0));
    panel.revalidate();
  }

  private void openPage() {
    list.selected().flatMap(WorkspaceFinding::page).ifPresent(tools.navigator()::openPage);
  }

  /** Asks first. */
  private void repair() {
    Optional<WorkspaceFinding> finding = list.selected().filter(each -> each.repair().isPresent());
    Object[] answers = {"Leave it", "Repair it"};
    if (finding.isPresent()
        && JOptionPane.showOptionDialog(
                panel,
                finding.get().repair().orElseThrow().words() + "\nNothing else in it is touched.",
                "Repair",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[1])
            == 1) {
      model.repair(finding.get());
      list.requestFocusInWindow();
    }
  }

  private void refresh() {
    List<WorkspaceFinding> shown = model.shown();
    if (!shown.equals(list.entries())) {
      list.show(shown);
      if (list.selected().isEmpty() && !shown.isEmpty()) {
        list.setSelectedIndex(0);
      }
    }
    List<Optional<FindingKind>> now = new ArrayList<>(List.of(Optional.empty()));
    for (FindingKind kind : FindingKind.values()) {
      if (model.count(kind) > 0 || model.kind().filter(kind::equals).isPresent()) {
        now.add(Optional.of(kind));
      }
    }
    if (!now.equals(offered) || !model.kind().equals(kinds.getSelectedItem())) {
      offered = now;
      kinds.show(now, model.kind());
    }
    kinds.repaint();
    told.setText(words(shown.size()));
    showSelected();
  }

  private String words(int shown) {
    if (!model.hasLooked()) {
      return "Not looked for yet.";
    }
    String still = model.looking().map(doing -> doing + " … ").orElse("");
    if (model.all().isEmpty()) {
      return still.isEmpty()
          ? "Nothing was found: every file is in order, and nothing speaks for a page to write."
          : still;
    }
    int unread = model.kind().isPresent() ? 0 : model.count(FindingKind.UNREAD);
    return still
        + CountWords.of(shown, "finding")
        + (shown < model.count() && model.kind().isEmpty() ? " of " + model.count() : "")
        + ". Enter opens the page for writing at the line."
        + (unread == 0
            ? ""
            : " "
                + CountWords.of(unread, "page")
                + " never read in full: choose that kind to list them.");
  }

  @Override
  public Name name() {
    return new Name("findings", "Findings", 'F');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(list, source, words);
  }
}
