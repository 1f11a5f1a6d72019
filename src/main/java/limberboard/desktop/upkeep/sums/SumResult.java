package limberboard.desktop.upkeep.sums;

import java.util.List;
import javax.swing.JComponent;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.words.Sentences;
import limberboard.workings.QuantityWords;
import limberboard.workings.sums.Answer;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Result;
import limberboard.workings.sums.Sum;

/** What comes of a sum: warnings first, then the results, the working, where it holds, sources. */
final class SumResult extends RaisedColumn {
  private final transient WorkingsModel model;

  SumResult(WorkingsModel model) {
    super(12);
    this.model = model;
    setName("sum-result");
    setFocusable(true);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Sum sum = model.chosen();
    SumForm form = model.form();
    removeAll();
    add(Text.title(sum.text().title()));
    add(Text.reading(sum.text().answers()));
    if (form.isRight()) {
      show(form.reckoning());
    } else {
      add(Text.strong("Put right what is marked among the numbers, then it is reckoned again."));
    }
    about(sum);
    revalidate();
    repaint();
  }

  private void show(Reckoning reckoning) {
    if (reckoning instanceof Reckoning.Done done) {
      show(done.answer());
    } else if (reckoning instanceof Reckoning.Refused refused) {
      refused.reasons().forEach(why -> add(Text.strong(Sentences.capital(why) + ".")));
      getAccessibleContext().setAccessibleName("Cannot be reckoned");
    }
  }

  private void show(Answer answer) {
    answer.warnings().forEach(warning -> add(Text.strong("Take care: " + warning)));
    Form results = new Form(8);
    StringBuilder spoken = new StringBuilder("Result");
    for (Result result : answer.results()) {
      String value = result.text(QuantityWords.METRIC);
      Wrapped words = Text.heading(value);
      words.setName("sum-result-" + result.id());
      results.line(result.title(), words, words);
      words.getAccessibleContext().setAccessibleName(result.title() + ": " + value);
      spoken.append(", ").append(result.title()).append(' ').append(value);
    }
    add(results);
    add(part("Working", answer.working()));
    getAccessibleContext().setAccessibleName(spoken.toString());
  }

  private void about(Sum sum) {
    add(part("Formula", List.of(sum.text().formula())));
    add(part("Where it holds", List.of(sum.text().holds())));
    add(part("Source", List.of(sum.text().source())));
  }

  private static JComponent part(String title, List<String> lines) {
    Column part = new Column(3);
    part.add(Text.caption(title));
    lines.forEach(line -> part.add(Text.plain(line)));
    return part;
  }
}
