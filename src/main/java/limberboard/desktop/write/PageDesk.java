package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Latest;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.write.complete.CompletionFinder;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.desktop.write.text.CompletionList;
import limberboard.desktop.write.text.PageEditor;
import limberboard.library.Library;
import limberboard.proofread.rule.PageRemark;

/** The text of one page, with what is wrong with it below. */
final class PageDesk extends JPanel {
  private final transient OpenPage page;
  private final transient WriteModel model;
  private final transient Latest completions;
  private final PageEditor editor;
  private final ProblemList problems;
  private final transient CompletionList completion;

  PageDesk(
      OpenPage page,
      WriteModel model,
      Latest completions,
      Divider.Memory dividers,
      Consumer<PageRemark> answering) {
    super(new BorderLayout());
    this.page = page;
    this.model = model;
    this.completions = completions;
    setOpaque(false);
    editor = new PageEditor(page, plain -> model.typed(page, plain));
    editor.onPictures(files -> model.changes().putIn(page, files));
    problems = new ProblemList(page, model, () -> Later.focus(editor.text()), answering);
    completion =
        new CompletionList(
            editor.text(),
            this::complete,
            chosen -> model.changes().insert(page, chosen.from(), chosen.to(), chosen.letters()));
    Keys.focused(editor.text(), "control SPACE", this::complete);
    Keys.within(editor, "F8", this::nextProblem);
    Keys.within(problems, "F8", this::nextProblem);
    add(Divider.below("write-problems", editor, problems, 0.76, dividers), BorderLayout.CENTER);
  }

  private void complete() {
    String plain = page.text().plain();
    int caret = editor.caret();
    Library library = page.checked().map(found -> found.read().library()).orElse(model.library());
    CompletionFinder finder = new CompletionFinder(library, page.kind(), page.path());
    completions.run("Looking what can stand here", () -> finder.at(plain, caret), completion::show);
  }

  JComponent text() {
    return editor.text();
  }

  List<JComponent> regions() {
    return List.of(editor.text(), problems.region());
  }

  void nextProblem() {
    problems.next();
    Later.focus(editor.text());
  }
}
