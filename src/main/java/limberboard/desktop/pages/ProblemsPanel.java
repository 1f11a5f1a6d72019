package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.Insets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import limberboard.desktop.base.Latest;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.Problem;
import limberboard.library.WorkspaceFolders;

/** Everything wrong in the files, and below it the file in question at its line. */
final class ProblemsPanel extends JPanel {
  private final transient PagesModel model;
  private final transient WorkspaceFolders folders;
  private final transient Latest latest;
  private final CardList<Problem> list;
  private final Wrapped words = Text.quiet("");
  private final JTextArea source = new JTextArea();

  ProblemsPanel(
      PagesModel model, WorkspaceFolders folders, Latest latest, Divider.Memory dividers) {
    super(new BorderLayout(0, 6));
    this.model = model;
    this.folders = folders;
    this.latest = latest;
    setOpaque(false);
    list = new CardList<Problem>("Problems in the files", ProblemsPanel::card).onChoose(this::show);
    list.setName("problem-list");
    source.setEditable(false);
    source.setMargin(new Insets(8, 10, 8, 10));
    source.getAccessibleContext().setAccessibleName("Text of the file");
    Column head = new Column(2).padded(0, 6, 4, 6);
    head.add(Text.title("Problems in the files"));
    head.add(words);
    JScrollPane text = new JScrollPane(source);
    text.setBorder(BorderFactory.createEmptyBorder());
    add(head, BorderLayout.NORTH);
    add(Divider.below("problems", list.scrolling(), text, 0.6, dividers), BorderLayout.CENTER);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    if (!model.problems().equals(list.entries())) {
      list.show(model.problems());
    }
    words.setText(
        model.problems().isEmpty()
            ? "There are none any more."
            : "Everything else works meanwhile. Choose one to see its file.");
  }

  private static Card card(Problem problem) {
    String where = problem.file() + (problem.line() > 0 ? ", line " + problem.line() : "");
    return Card.of(line(problem), problem.right()).noting(where).ofKind(severity(problem));
  }

  private static String severity(Problem problem) {
    return problem.severity() == Problem.Severity.ERROR ? "does not work" : "worth a look";
  }

  /** What is wrong, in one line. */
  static String line(Problem problem) {
    String line = problem.line() > 0 ? "Line " + problem.line() + ": " : "";
    return line + (problem.key().isEmpty() ? "" : problem.key() + ": ") + problem.wrong();
  }

  private void show(Problem problem) {
    Path file = folders.root().resolve(problem.file()).normalize();
    if (!file.startsWith(folders.root())) {
      return;
    }
    latest.run(
        "Reading " + problem.file(),
        () -> Files.isRegularFile(file) ? Files.readString(file) : "",
        text -> show(text, problem.line()));
  }

  private void show(String text, int line) {
    source.setFont(new Font(Font.MONOSPACED, Font.PLAIN, source.getFont().getSize()));
    source.setText(text);
    source.setCaretPosition(0);
    source.getHighlighter().removeAllHighlights();
    if (line < 1 || line > source.getLineCount()) {
      return;
    }
    try {
      int start = source.getLineStartOffset(line - 1);
      int end = source.getLineEndOffset(line - 1);
      source
          .getHighlighter()
          .addHighlight(
              start, end, new DefaultHighlighter.DefaultHighlightPainter(Palette.MARK.color()));
      source.setCaretPosition(start);
    } catch (BadLocationException e) {
      throw new IllegalStateException("the line is there, and its place is not", e);
    }
  }
}
