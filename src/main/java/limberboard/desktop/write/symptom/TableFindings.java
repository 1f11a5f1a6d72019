package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/**
 * What is wrong with the symptom, or could be better. Enter goes to the cell where it is mended.
 */
final class TableFindings extends JPanel {
  private final Wrapped state = Text.plain("");
  private final CardList<SymptomFinding> list;
  private transient List<SymptomFinding> shown = List.of();

  /**
   * A list of findings.
   *
   * @param go goes to where one is mended
   */
  TableFindings(Consumer<TableCell> go) {
    super(new BorderLayout(0, 6));
    setOpaque(false);
    list = new CardList<SymptomFinding>("What to mend", this::card);
    list.onChoose(finding -> finding.cell().ifPresent(go));
    list.setName("symptom-findings");
    state.setName("symptom-findings-state");
    Column top = new Column(4).padded(4, 4, 0, 4);
    top.add(state);
    add(top, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
  }

  private Card card(SymptomFinding finding) {
    int at = shown.indexOf(finding);
    boolean begins = at <= 0 || shown.get(at - 1).rank() != finding.rank();
    String title = finding.about().isEmpty() ? "The page" : finding.about();
    return Card.of(title, finding.wrong())
        .noting(finding.right())
        .under(begins ? finding.rank().heading() : "");
  }

  void show(SymptomModel model) {
    if (!shown.equals(model.findings())) {
      shown = model.findings();
      list.show(shown);
      list.refreshHeights();
    }
    state.setText(
        model.isWorking()
            ? "Being looked at …"
            : shown.isEmpty() ? "Nothing is wrong, and every check and cause is of use." : "");
    state.setVisible(!state.getText().isEmpty());
  }

  JComponent first() {
    return list;
  }
}
