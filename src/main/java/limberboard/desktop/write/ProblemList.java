package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.TextFinding;
import limberboard.desktop.write.state.WriteModel;
import limberboard.library.problem.Problem;
import limberboard.proofread.Proofreader;
import limberboard.proofread.rule.PageRemark;
import limberboard.words.CountWords;
import limberboard.words.Sentences;

/**
 * What is wrong with the text and what a proofreader finds in it: where, and what would be right;
 * Enter goes there.
 */
final class ProblemList extends JPanel {
  private final transient OpenPage page;
  private final transient WriteModel model;
  private final Wrapped words = Text.caption("");
  private final CardList<TextFinding> list;
  private final JButton repair;
  private final JButton answer;

  ProblemList(OpenPage page, WriteModel model, Runnable toText, Consumer<PageRemark> answering) {
    super(new BorderLayout(0, 2));
    this.page = page;
    this.model = model;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(4, 4, 0, 4));
    list =
        new CardList<TextFinding>("What is wrong with the text", ProblemList::card)
            .onChoose(
                finding -> {
                  go(finding);
                  toText.run();
                });
    list.setName("write-problems");
    list.addListSelectionListener(e -> offer());
    repair =
        Buttons.plain("Repair", "write-repair", "Ctrl+Enter in the list", this::repairSelected);
    answer =
        Buttons.plain(
            "Answer …",
            "write-answer",
            "It is right as it stands: says why in the header",
            () -> list.selected().flatMap(TextFinding::remark).ifPresent(answering));
    Keys.focused(list, "control ENTER", this::repairSelected);
    add(Row.growing(8, 0, words, repair, answer), BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    page.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return list;
  }

  private void refresh() {
    List<TextFinding> findings = page.findings();
    if (!findings.equals(list.entries())) {
      list.show(findings);
    }
    words.setText(words(findings));
    offer();
  }

  private String words(List<TextFinding> findings) {
    if (page.checked().isEmpty()) {
      return "The text is being looked at …";
    }
    int remarks = (int) findings.stream().filter(each -> each.remark().isPresent()).count();
    List<String> counted = new ArrayList<>();
    if (findings.size() > remarks) {
      counted.add(CountWords.of(findings.size() - remarks, "problem"));
    }
    if (remarks > 0) {
      counted.add(CountWords.of(remarks, "finding") + " of the proofreader");
    }
    return counted.isEmpty()
        ? "Nothing is wrong with this page."
        : String.join(", ", counted) + " (F8 goes to the next)";
  }

  private static Card card(TextFinding finding) {
    Problem problem = finding.problem();
    String line = problem.line() > 0 ? "Line " + problem.line() + ": " : "";
    String key = problem.key().isEmpty() ? "" : problem.key() + ": ";
    Card card = Card.of(line + key + problem.wrong(), Sentences.capital(problem.right()));
    Optional<String> kind =
        finding
            .remark()
            .map(remark -> remark.gravity().words())
            .or(
                () ->
                    problem.severity() == Problem.Severity.ERROR
                        ? Optional.empty()
                        : Optional.of("worth a look"));
    Card told = kind.map(card::ofKind).orElse(card);
    Optional<String> step =
        finding
            .repair()
            .map(
                each ->
                    finding.remark().isPresent()
                        ? "Ctrl+Enter does it."
                        : "Ctrl+Enter: " + each.deed() + ".");
    return step.map(told::noting).orElse(told);
  }

  private void offer() {
    repair.setVisible(list.selected().flatMap(TextFinding::repair).isPresent());
    answer.setVisible(
        list.selected()
            .flatMap(TextFinding::remark)
            .filter(remark -> !remark.rule().equals(Proofreader.ANSWER))
            .isPresent());
  }

  private void repairSelected() {
    list.selected().flatMap(TextFinding::repair).ifPresent(step -> model.repair(page, step));
  }

  private void go(TextFinding finding) {
    finding.place().ifPresent(at -> page.goTo(at.from(), at.to()));
  }

  /**
   * Goes to the next problem behind the caret, or to the first; once there are none, to what the
   * proofreader finds.
   */
  void next() {
    List<TextFinding> placed =
        page.findings().stream().filter(each -> each.place().isPresent()).toList();
    List<TextFinding> problems = placed.stream().filter(each -> each.remark().isEmpty()).toList();
    next(problems.isEmpty() ? placed : problems);
  }

  private void next(List<TextFinding> placed) {
    placed.stream()
        .filter(each -> each.place().get().to() > page.caret())
        .findFirst()
        .or(() -> placed.stream().findFirst())
        .ifPresent(
            finding -> {
              list.setSelectedValue(finding, true);
              go(finding);
            });
  }
}
