package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridLayout;
import java.awt.Insets;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.words.CountWords;
import limberboard.writing.PageText;
import limberboard.writing.save.LineDifference;
import limberboard.writing.save.SaveOutcome;

/** Both versions of a page side by side, with where they differ. */
final class BothSheet extends Sheet {
  private final transient WriteModel model;
  private final Wrapped words = Text.plain("");
  private final CardList<LineDifference> places;
  private final JTextArea mine = version("write-mine", "What was typed here");
  private final JTextArea theirs = version("write-theirs", "What its file holds now");

  BothSheet(WriteModel model, Divider.Memory dividers, Runnable away) {
    super(away);
    this.model = model;
    places = new CardList<>("Where both differ", BothSheet::card).onChoose(this::take);
    places.setName("write-differences");
    places.addListSelectionListener(e -> places.selected().ifPresent(this::look));
    Column head = new Column(8);
    head.add(Text.heading("The file was changed by somebody else"));
    head.add(words);
    head.add(
        Row.wrapping(
            8,
            Buttons.plain("Go on writing", "write-back", away),
            Buttons.plain("Save mine over it", "write-save-mine", this::keepMine),
            Buttons.plain("Take theirs", "write-take-theirs", this::keepTheirs)));
    add(head, BorderLayout.NORTH);
    JPanel both = new JPanel(new GridLayout(1, 2, 10, 0));
    both.setOpaque(false);
    both.add(titled("Typed here, not saved", mine));
    both.add(titled("In the file now", theirs));
    add(Divider.below("write-both", both, places.scrolling(), 0.7, dividers), BorderLayout.CENTER);
  }

  private static JTextArea version(String name, String says) {
    JTextArea area = new Version();
    area.setName(name);
    area.setEditable(false);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setMargin(new Insets(6, 8, 6, 8));
    area.getAccessibleContext().setAccessibleName(says);
    return area;
  }

  /** Its type follows the theme. */
  private static final class Version extends JTextArea {
    @Override
    public void updateUI() {
      super.updateUI();
      int size = UIManager.getFont("defaultFont").getSize();
      setFont(new Font(Font.MONOSPACED, Font.PLAIN, size));
    }
  }

  private static JComponent titled(String title, JTextArea area) {
    JPanel panel = new JPanel(new BorderLayout(0, 4));
    panel.setOpaque(false);
    panel.add(Text.caption(title), BorderLayout.NORTH);
    panel.add(new JScrollPane(area), BorderLayout.CENTER);
    return panel;
  }

  @Override
  void ready() {
    clash().ifPresent(this::show);
  }

  private Optional<SaveOutcome.Changed> clash() {
    return model.current().flatMap(OpenPage::clash);
  }

  private void show(SaveOutcome.Changed clash) {
    boolean gone = clash.theirs().isEmpty();
    words.setText(
        (gone
                ? "The file is gone. "
                : "They differ in " + CountWords.of(clash.differences().size(), "place") + ". ")
            + "Nothing was written. Enter on a place below takes what the file has there; undo"
            + " takes that back.");
    mine.setText(clash.mine().plain());
    theirs.setText(clash.theirs().map(PageText::plain).orElse(""));
    for (LineDifference each : clash.differences()) {
      mark(mine, each.mineFrom(), each.mine().size());
      mark(theirs, each.theirsFrom(), each.theirs().size());
    }
    mine.setCaretPosition(0);
    theirs.setCaretPosition(0);
    places.show(clash.differences());
    if (!clash.differences().isEmpty()) {
      places.setSelectedIndex(0);
      look(clash.differences().get(0));
    }
  }

  private static void mark(JTextArea area, int from, int lines) {
    try {
      if (lines > 0 && from < area.getLineCount()) {
        int last = Math.min(area.getLineCount(), from + lines) - 1;
        area.getHighlighter()
            .addHighlight(
                area.getLineStartOffset(from),
                area.getLineEndOffset(last),
                new DefaultHighlighter.DefaultHighlightPainter(Palette.MARK.color()));
      }
    } catch (BadLocationException e) {
      throw new IllegalStateException("a difference stands beyond the text", e);
    }
  }

  private void look(LineDifference place) {
    reveal(mine, place.mineFrom());
    reveal(theirs, place.theirsFrom());
  }

  private static void reveal(JTextArea area, int line) {
    try {
      area.setCaretPosition(area.getLineStartOffset(Math.min(line, area.getLineCount() - 1)));
    } catch (BadLocationException e) {
      throw new IllegalStateException("a difference stands beyond the text", e);
    }
  }

  private static Card card(LineDifference place) {
    return Card.of(
        "Line " + (place.mineFrom() + 1) + ": " + said(place.mine()),
        "In the file: " + said(place.theirs()));
  }

  private static String said(List<String> lines) {
    return lines.isEmpty() ? "nothing" : String.join(" / ", lines).strip();
  }

  private void take(LineDifference place) {
    model.current().ifPresent(page -> model.versions().take(page, place));
  }

  private void keepMine() {
    away();
    model.current().ifPresent(model.versions()::keepMine);
  }

  private void keepTheirs() {
    model.current().ifPresent(model.versions()::keepTheirs);
    away();
  }

  @Override
  JComponent begin() {
    return places;
  }

  @Override
  List<JComponent> regions() {
    return List.of(places, mine, theirs);
  }
}
