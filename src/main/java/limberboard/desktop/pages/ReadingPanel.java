package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.CutReader;
import limberboard.desktop.read.PageAction;
import limberboard.desktop.tree.TreePapers;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;

/** The page with its tools above it, or words where there is no page, or the problems. */
final class ReadingPanel extends JPanel {
  private static final int ICON = 18;
  private static final String CARD =
      "Of a symptom: as much of what happens as goes on one sheet, for a locker's lid";
  private static final String TREE =
      "Of a symptom: every step to its mend on the chosen boat, by numbers, on sheets";
  private final transient PagesModel model;
  private final transient CutReader reader;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final Wrapped nothing = Text.reading("");
  private final JButton back;
  private final JButton forward;
  private final JToggleButton cut = new JToggleButton("For all boats");
  private final JButton trace;
  private final JButton write;
  private final JButton print;
  private final JButton save;
  private final transient List<JButton> trees;
  private Tools tools;
  private String onScreen = "";

  ReadingPanel(
      PagesModel model,
      CutReader reader,
      ProblemsPanel problems,
      Runnable traceIt,
      TreePapers papers) {
    super(new BorderLayout(0, 6));
    this.model = model;
    this.reader = reader;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(12, 8, 8, 8));
    back = Buttons.icon(LineIcon.back(ICON), "Back (Alt+Left)", model::back);
    back.setName("back");
    forward = Buttons.icon(LineIcon.forward(ICON), "Forward (Alt+Right)", model::forward);
    forward.setName("forward");
    trace = Buttons.main("Trace this", traceIt);
    write = Buttons.plain("Write it", "write-page", "F4: goes where it is written", reader::write);
    print = Buttons.plain("Print …", "print-page", reader::print);
    save = Buttons.plain("Save as PDF …", "save-page", reader::savePdf);
    trees =
        List.of(
            ofTree("Print card …", "print-card", CARD, papers::printCard),
            ofTree("Save card as PDF …", "save-card", CARD, papers::saveCard),
            ofTree("Print tree …", "print-tree", TREE, papers::printTree),
            ofTree("Save tree as PDF …", "save-tree", TREE, papers::saveTree));
    Column empty = new Column(0).padded(40, 40, 40, 40);
    empty.add(nothing);
    shown.setOpaque(false);
    shown.add(empty, "nothing");
    shown.add(reader.component(), "page");
    shown.add(problems, "problems");
    add(tools(), BorderLayout.NORTH);
    add(shown, BorderLayout.CENTER);
    model.positionFrom(() -> reader.pane().position());
    model.onChange(this::refresh);
    refresh();
  }

  /** A button for the symptom that is read; traces and trees need the chosen boat. */
  private JButton ofTree(String text, String name, String tip, Consumer<String> action) {
    return Buttons.plain(text, name, tip, () -> model.page().map(Page::id).ifPresent(action));
  }

  private JComponent tools() {
    cut.setName("all-boats");
    cut.setToolTipText("Show everything, or only what is for the chosen boat");
    cut.addActionListener(e -> model.forAllBoats(cut.isSelected()));
    Column column = new Column(0).padded(0, 2, 0, 2);
    List<JComponent> always = List.of(back, forward, cut, trace);
    List<JButton> seldom = Stream.concat(Stream.of(write, print, save), trees.stream()).toList();
    tools = new Tools("page-more", 8, always, seldom);
    column.add(tools);
    return column;
  }

  /** Offers something in the page's menu and by its key. */
  void offer(PageAction action) {
    reader.pane().offer(action);
  }

  JComponent region() {
    return reader.pane().region();
  }

  /** Whether a page is to be read now. */
  boolean isPageShown() {
    return !model.problemsShown() && model.page().isPresent();
  }

  /** Goes where the page is written. */
  void write() {
    if (isPageShown()) {
      reader.write();
    }
  }

  /** Prints the page. */
  Optional<Runnable> print() {
    return isPageShown() ? Optional.of(reader::print) : Optional.empty();
  }

  /** Searches in the page. */
  Optional<Place.Find> find() {
    return isPageShown() ? Optional.of(reader.pane().finding()) : Optional.empty();
  }

  private void refresh() {
    Optional<Page<?>> page = model.page();
    back.setEnabled(model.canGoBack());
    forward.setEnabled(model.canGoForward());
    cut.setSelected(model.forAllBoats());
    cut.setEnabled(model.boat().isPresent());
    cut.setText(cutWords());
    trace.setVisible(model.canTrace());
    trees.forEach(button -> button.setEnabled(model.canTrace()));
    tools.offer(trees, page.filter(read -> read.kind() == Kind.SYMPTOM).isPresent());
    write.setEnabled(page.isPresent());
    print.setEnabled(page.isPresent());
    save.setEnabled(page.isPresent());
    if (model.problemsShown()) {
      cards.show(shown, "problems");
    } else if (page.isPresent()) {
      show(page.get());
    } else {
      onScreen = "";
      nothing.setText(emptyWords());
      cards.show(shown, "nothing");
    }
  }

  private String cutWords() {
    return model
        .boat()
        .map(boat -> "For all boats, not only " + boat.boat().name())
        .orElse("For all boats");
  }

  private void show(Page<?> page) {
    cards.show(shown, "page");
    reader.forAllBoats(model.forAllBoats());
    if (!page.id().equals(onScreen)) {
      onScreen = page.id();
      reader.show(page.id(), model.position());
    }
  }

  private String emptyWords() {
    if (!model.isRead()) {
      return "Reading the library …";
    }
    Optional<Problem> broken = model.broken();
    if (broken.isPresent()) {
      return "This page cannot be read just now. In its file "
          + broken.get().file()
          + ": "
          + ProblemsPanel.line(broken.get())
          + ". "
          + broken.get().right()
          + " As soon as that is mended, the page stands here again.";
    }
    if (model.contents().isEmpty() && model.filter().isBlank()) {
      return "The library has no pages yet. A page is a Markdown file in one of the folders below"
          + " articles; as soon as there is one, it stands here.";
    }
    return "Choose a page at the left, or search at the top.";
  }
}
