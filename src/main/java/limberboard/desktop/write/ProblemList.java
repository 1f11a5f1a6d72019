package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.library.problem.Problem;
import limberboard.words.CountWords;
import limberboard.words.Sentences;
import limberboard.writing.typing.MarkedProblem;

/** What is wrong with the text, where, and what would be right; Enter goes there. */
final class ProblemList extends JPanel {
  private final transient OpenPage page;
  private final Wrapped words = Text.caption("");
  private final CardList<MarkedProblem> list;

  ProblemList(OpenPage page, Runnable toText) {
    super(new BorderLayout(0, 2));
    this.page = page;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(4, 4, 0, 4));
    list =
        new CardList<MarkedProblem>("What is wrong with the text", ProblemList::card)
            .onChoose(
                problem -> {
                  go(problem);
                  toText.run();
                });
    list.setName("write-problems");
    add(words, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    page.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return list;
  }

  private void refresh() {
    List<MarkedProblem> problems = page.problems();
    if (!problems.equals(list.entries())) {
      list.show(problems);
    }
    words.setText(
        page.checked().isEmpty()
            ? "The text is being looked at …"
            : problems.isEmpty()
                ? "Nothing is wrong with this page."
                : CountWords.of(problems.size(), "problem") + " (F8 goes to the next)");
  }

  private static Card card(MarkedProblem marked) {
    Problem problem = marked.problem();
    String line = problem.line() > 0 ? "Line " + problem.line() + ": " : "";
    String key = problem.key().isEmpty() ? "" : problem.key() + ": ";
    Card card = Card.of(line + key + problem.wrong(), Sentences.capital(problem.right()));
    return problem.severity() == Problem.Severity.ERROR ? card : card.ofKind("worth a look");
  }

  private void go(MarkedProblem problem) {
    problem.place().ifPresent(at -> page.goTo(at.from(), at.to()));
  }

  /** Goes to the next problem behind the caret, or to the first. */
  void next() {
    List<MarkedProblem> placed =
        page.problems().stream().filter(each -> each.place().isPresent()).toList();
    placed.stream()
        .filter(each -> each.place().get().to() > page.caret())
        .findFirst()
        .or(() -> placed.stream().findFirst())
        .ifPresent(
            problem -> {
              list.setSelectedValue(problem, true);
              go(problem);
            });
  }
}
