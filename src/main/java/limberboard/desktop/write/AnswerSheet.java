package limberboard.desktop.write;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.write.state.WriteModel;
import limberboard.findings.HeaderRepair;
import limberboard.proofread.rule.PageRemark;
import limberboard.words.Sentences;

/** Answers in the page's header what the proofreader finds and is right as it stands. */
final class AnswerSheet extends Sheet {
  private final transient WriteModel model;
  private final Wrapped found = Text.plain("");
  private final JTextField why = new JTextField();
  private final JButton answer;
  private transient Optional<PageRemark> remark = Optional.empty();

  AnswerSheet(WriteModel model, Runnable away) {
    super(away);
    this.model = model;
    answer = Buttons.main("Answer it", "write-answer-do", this::answer);
    why.setName("write-answer-why");
    Column column = column();
    column.add(Text.heading("It is right as it stands"));
    column.add(found);
    column.add(
        Text.quiet(
            "Your answer stands in the page's header, and the finding is silent from then."));
    Form form = new Form(10);
    form.line("Why", why, why);
    column.add(form);
    column.add(Row.wrapping(8, answer, Buttons.plain("Back to the text", "write-back", away)));
    When.typed(why, this::refresh);
    Keys.focused(why, "ENTER", this::answer);
  }

  /** Asks about a finding. */
  AnswerSheet about(PageRemark finding) {
    remark = Optional.of(finding);
    found.setText(Sentences.capital(finding.wrong()) + ".");
    why.setText("");
    refresh();
    return this;
  }

  private void refresh() {
    answer.setEnabled(!why.getText().isBlank());
  }

  private void answer() {
    if (!why.getText().isBlank() && remark.isPresent() && model.current().isPresent()) {
      String said = why.getText().strip();
      model.repair(model.current().get(), HeaderRepair.answering(remark.get(), said));
      away();
    }
  }

  @Override
  JComponent begin() {
    return why;
  }
}
