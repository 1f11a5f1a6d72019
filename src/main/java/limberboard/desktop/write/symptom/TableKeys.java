package limberboard.desktop.write.symptom;

import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.UnaryOperator;
import limberboard.desktop.parts.Keys;
import limberboard.writing.symptom.LikelihoodKeys;

/**
 * What the keys do in the table: arrows move, one key fills a likelihood in, Enter opens a cell.
 */
final class TableKeys {
  private final TableView view;
  private final SymptomModel model;
  private final CellLine line;

  private TableKeys(TableView view, SymptomModel model, CellLine line) {
    this.view = view;
    this.model = model;
    this.line = line;
  }

  static void bind(TableView view, SymptomModel model, CellLine line) {
    new TableKeys(view, model, line).bind();
  }

  private void bind() {
    go("RIGHT", place -> place.right(view.grid(), 1));
    go("LEFT", place -> place.right(view.grid(), -1));
    go("DOWN", place -> place.down(view.grid(), 1));
    go("UP", place -> place.down(view.grid(), -1));
    go("HOME", place -> place.atEnd(view.grid(), -1));
    go("END", place -> place.atEnd(view.grid(), 1));
    go("control HOME", place -> new TablePlace(0, 0));
    go("SPACE", place -> place.next(view.grid()));
    act("ENTER", () -> line.open(view.cell()));
    act("F2", () -> line.open(view.cell()));
    act("INSERT", this::insert);
    act("DELETE", this::clear);
    act("BACK_SPACE", this::clear);
    act("control Z", model::undo);
    view.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyTyped(KeyEvent e) {
            boolean command =
                (e.getModifiersEx()
                        & (InputEvent.CTRL_DOWN_MASK
                            | InputEvent.ALT_DOWN_MASK
                            | InputEvent.META_DOWN_MASK))
                    != 0;
            char typed = e.getKeyChar();
            if (!e.isConsumed()
                && view.hasGrid()
                && !command
                && typed > ' '
                && typed != 0x7f
                && typed != KeyEvent.CHAR_UNDEFINED) {
              type(typed);
              e.consume();
            }
          }
        });
  }

  private void act(String key, Runnable action) {
    Keys.focused(
        view,
        key,
        () -> {
          if (view.hasGrid()) {
            action.run();
          }
        });
  }

  private void go(String key, UnaryOperator<TablePlace> to) {
    act(key, () -> view.select(to.apply(view.selected())));
  }

  private void type(char typed) {
    TableCell cell = view.cell();
    if (cell instanceof TableCell.Word word) {
      Optional<String> likelihood = LikelihoodKeys.word(typed);
      if (likelihood.isEmpty()) {
        line.say("No word has the key \u201c" + typed + "\u201d. Enter lists them all.");
      } else if (model.edit(edits -> edits.word(word, likelihood))) {
        view.select(view.selected().next(view.grid()));
      }
    } else if (cell instanceof TableCell.Weight && typed >= '1' && typed <= '9') {
      if (model.edit(edits -> edits.typed(cell, String.valueOf(typed)))) {
        view.select(view.selected().down(view.grid(), 1));
      }
    } else {
      line.type(cell, typed);
    }
  }

  private void clear() {
    TableCell cell = view.cell();
    if (model.edit(edits -> edits.cleared(cell))) {
      boolean gone = cell instanceof TableCell.CauseTitle || cell instanceof TableCell.Ask;
      line.say(gone ? "Taken out. " + Keys.spoken("control Z") + " brings it back." : "");
    }
  }

  /** A further cause, check or answer, by where one is. */
  private void insert() {
    TableCell cell = view.cell();
    if (cell instanceof TableCell.Answer answer) {
      int behind = view.grid().table().checks().get(answer.check()).answers().size();
      line.open(new TableCell.Answer(answer.check(), behind));
      return;
    }
    boolean check =
        cell instanceof TableCell.Ask
            || cell instanceof TableCell.How
            || cell instanceof TableCell.CheckMinutes
            || cell instanceof TableCell.NewCheck;
    TableCell wanted = check ? new TableCell.NewCheck() : new TableCell.NewCause();
    view.grid().find(wanted).ifPresent(view::select);
    line.open(wanted);
  }
}
