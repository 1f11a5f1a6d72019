package limberboard.desktop.letters;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.desktop.parts.Wrapped;
import limberboard.letters.answer.DraftBlock;
import limberboard.letters.inbox.LetterState;
import limberboard.library.page.Page;

/** The draft of the answer, piece by piece, and what can be done with it. */
final class DraftPanel extends JPanel {
  private final transient LetterModel model;
  private final Column pieces = new Column(6);
  private final Wrapped heading = Text.quiet("");
  private final Wrapped told = Text.quiet("");
  private final JCheckBox attach = new JCheckBox("Send its pages as PDF with it");
  private final Wrapped pages = Text.quiet("");
  private final JButton answered;
  private final transient Map<String, PieceEditor> editors = new HashMap<>();
  private transient List<String> order = List.of();
  private String letter = "";

  DraftPanel(LetterModel model, DraftOut out) {
    super(new BorderLayout(0, 6));
    this.model = model;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 8, 10, 14));
    answered =
        Buttons.plain("Mark answered", "letter-answered", () -> model.state(LetterState.ANSWERED));
    answered.setMnemonic('M');
    List<JButton> deeds =
        List.of(
            answered,
            Buttons.plain("Copy as text", "letter-copy-text", "For a mail program", out::copyText),
            Buttons.plain(
                "Copy as HTML",
                "letter-copy-html",
                "With headings and lists, for a mail program",
                out::copyHtml));
    Tools tools =
        new Tools(
            "draft-more",
            6,
            List.of(
                Buttons.main(
                    "Save as letter …",
                    "letter-save",
                    () -> out.save(attach.isSelected() && attach.isVisible()))),
            deeds);
    Column above = new Column(6);
    above.add(Text.title("Answer"));
    above.add(tools);
    above.add(heading);
    attach.setName("letter-attach");
    attach.setMnemonic('P');
    attach.setOpaque(false);
    attach.setToolTipText("When it is saved as a letter: each page is cut to the boat");
    above.add(attach);
    above.add(pages);
    above.add(told);
    add(above, BorderLayout.NORTH);
    add(pieces.scrolling(), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    String name = model.letter().map(OpenLetter::name).orElse("");
    if (!name.equals(letter)) {
      letter = name;
      attach.setSelected(false);
      editors.clear();
      order = List.of();
      pieces.removeAll();
      pieces.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    }
    heading.setText(
        model.letter().map(open -> DraftOut.heading(open.understood().letter().head())).orElse(""));
    told.setText(words());
    told.setVisible(!told.getText().isEmpty());
    answered.setEnabled(
        model.letter().filter(o -> o.note().state() != LetterState.ANSWERED).isPresent());
    attachable();
    show(model.answer().blocks());
  }

  /** Offers the pages that the draft goes by. */
  private void attachable() {
    List<String> titles =
        model.letter().stream()
            .map(open -> open.understood().workspace().library())
            .flatMap(
                library -> model.answer().pages().stream().flatMap(id -> library.page(id).stream()))
            .map(Page::title)
            .toList();
    attach.setVisible(!titles.isEmpty());
    pages.setVisible(!titles.isEmpty());
    pages.setText("Pages: " + String.join("; ", titles) + ".");
    attach
        .getAccessibleContext()
        .setAccessibleDescription("With a saved letter: " + String.join("; ", titles));
  }

  private String words() {
    if (model.letter().isEmpty()) {
      return model.isChosen() ? "" : "The answer to the letter is drafted here.";
    }
    if (!model.isDrafted()) {
      return "Drafting the answer …";
    }
    List<String> gone =
        model.answer().blocks().stream()
            .filter(block -> block.isEdited() && block.text().isBlank())
            .map(block -> PieceWords.of(block.id()))
            .filter(words -> words.startsWith("Caution"))
            .toList();
    if (!gone.isEmpty()) {
      return "You have left out: " + String.join("; ", gone) + ".";
    }
    return model.answer().isEmpty() ? "Nothing is to be answered." : "";
  }

  private void show(List<DraftBlock> blocks) {
    List<String> ids = blocks.stream().map(DraftBlock::id).toList();
    for (DraftBlock block : blocks) {
      PieceEditor known = editors.get(block.id());
      if (known == null) {
        editors.put(block.id(), new PieceEditor(block, model));
      } else {
        known.show(block);
      }
    }
    if (!ids.equals(order)) {
      order = ids;
      editors.keySet().retainAll(ids);
      Refilled.fill(pieces, () -> ids.forEach(id -> pieces.add(editors.get(id))));
    }
    pieces.revalidate();
  }

  /** Where editing begins. */
  JComponent first() {
    List<JComponent> all = new ArrayList<>();
    order.forEach(id -> all.add(editors.get(id).area()));
    return all.isEmpty() ? pieces : all.get(0);
  }
}
