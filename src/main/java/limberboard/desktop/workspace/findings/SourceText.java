package limberboard.desktop.workspace.findings;

import java.awt.Font;
import java.awt.Insets;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter.DefaultHighlightPainter;
import limberboard.desktop.base.Latest;
import limberboard.desktop.look.Palette;
import limberboard.library.file.WorkspaceFolders;

/** The text of a file, to be read, with one line marked. */
final class SourceText extends JTextArea {
  private static final long MOST_BYTES = 2_000_000;
  private final transient WorkspaceFolders folders;
  private final transient Latest latest;

  SourceText(WorkspaceFolders folders, Latest latest) {
    this.folders = folders;
    this.latest = latest;
    setEditable(false);
    setName("finding-source");
    setMargin(new Insets(8, 10, 8, 10));
    getAccessibleContext().setAccessibleName("Text of the file");
  }

  /** Shows a file of the workspace; nothing where the file is empty text. */
  void show(String file, int line) {
    Path path = folders.root().resolve(file).normalize();
    if (file.isEmpty() || !path.startsWith(folders.root())) {
      latest.drop();
      setText("");
      return;
    }
    latest.run("Reading " + file, () -> text(path), text -> showText(text, line));
  }

  /** The text; bytes that are no text stand as signs of their own. */
  private static String text(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return "The file is not there any more.";
    }
    if (Files.size(file) > MOST_BYTES) {
      return "The file is too large to be shown.";
    }
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  private void showText(String text, int line) {
    setFont(new Font(Font.MONOSPACED, Font.PLAIN, getFont().getSize()));
    if (!text.equals(getText())) {
      setText(text);
    }
    getHighlighter().removeAllHighlights();
    setCaretPosition(0);
    if (line < 1 || line > getLineCount()) {
      return;
    }
    try {
      int start = getLineStartOffset(line - 1);
      int end = getLineEndOffset(line - 1);
      getHighlighter().addHighlight(start, end, new DefaultHighlightPainter(Palette.MARK.color()));
      setCaretPosition(start);
    } catch (BadLocationException e) {
      throw new IllegalStateException("the line is there, and its place is not", e);
    }
  }
}
