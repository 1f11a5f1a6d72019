package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.Insets;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/** Everything wrong in the files, and below it the file in question at its line. */
final class ProblemsPanel extends JPanel {
  private static final long MOST_BYTES = 2_000_000;
  private final transient PagesModel model;
  private final transient WorkspaceFolders folders;
  private final transient Latest latest;
  private final CardList<Problem> list;
  private final Wrapped words = Text.quiet("");
  private final JTextArea source = new JTextArea();
  private transient Optional<Problem> opened = Optional.empty();

  ProblemsPanel(
      PagesModel model, WorkspaceFolders folders, Latest latest, Divider.Memory dividers) {
    super(new BorderLayout(0, 6));
    this.model = model;
    this.folders = folders;
    this.latest = latest;
    setOpaque(false);
    list = new CardList<Problem>("Problems in the files", this::card).onChoose(this::open);
    list.setName("problem-list");
    source.setEditable(false);
    source.setName("problem-source");
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
    List<Problem> problems = byFile(model.problems());
    if (!problems.equals(list.entries())) {
      list.show(problems);
    }
    words.setText(
        problems.isEmpty()
            ? "There are none any more."
            : "Everything else works meanwhile. Choose one to see its file.");
    if (opened.filter(problem -> !problems.contains(problem)).isPresent()) {
      opened = Optional.empty();
      latest.drop();
      source.setText("");
    }
    if (model.problemsShown()) {
      opened.ifPresent(this::read);
    }
  }

  /** Files in the order of their first problem, and in each the lines in order. */
  private static List<Problem> byFile(List<Problem> problems) {
    Map<String, List<Problem>> files = new LinkedHashMap<>();
    problems.forEach(
        problem -> files.computeIfAbsent(problem.file(), file -> new ArrayList<>()).add(problem));
    return files.values().stream()
        .flatMap(found -> found.stream().sorted(Comparator.comparingInt(Problem::line)))
        .toList();
  }

  private Card card(Problem problem) {
    Card card = Card.of(line(problem), problem.right()).ofKind(severity(problem));
    List<Problem> all = list.entries();
    int at = all.indexOf(problem);
    boolean first = at <= 0 || !all.get(at - 1).file().equals(problem.file());
    return first ? card.under(heading(problem)) : card;
  }

  private String heading(Problem problem) {
    boolean page = problem.file().endsWith(".md");
    return problem.file()
        + (page && !model.works(problem.file()) ? ": the page cannot be read" : "");
  }

  /** A page that can be read works, but for what is wrong in it. */
  private String severity(Problem problem) {
    if (problem.severity() != Problem.Severity.ERROR) {
      return "worth a look";
    }
    return model.works(problem.file()) ? "left out" : "does not work";
  }

  /** What is wrong, in one line. */
  static String line(Problem problem) {
    String line = problem.line() > 0 ? "Line " + problem.line() + ": " : "";
    return line + (problem.key().isEmpty() ? "" : problem.key() + ": ") + problem.wrong();
  }

  private void open(Problem problem) {
    opened = Optional.of(problem);
    read(problem);
  }

  private void read(Problem problem) {
    Path file = folders.root().resolve(problem.file()).normalize();
    if (file.startsWith(folders.root())) {
      latest.run(
          "Reading " + problem.file(),
          () -> text(file),
          text -> {
            if (!text.equals(source.getText())) {
              show(text, problem.line());
            }
          });
    }
  }

  /** The text of a file; bytes that are no text stand as signs of their own. */
  private static String text(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return "The file is not there any more.";
    }
    if (Files.size(file) > MOST_BYTES) {
      return "The file is too large to be shown.";
    }
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).replace("\r\n", "\n");
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
