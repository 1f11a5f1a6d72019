package limberboard.desktop.write.symptom;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Check;
import limberboard.writing.PageText;
import limberboard.writing.symptom.LikelihoodKeys;
import limberboard.writing.symptom.SymptomEdits;
import limberboard.writing.symptom.SymptomTable;
import limberboard.writing.symptom.TableCheck;

/**
 * What becomes of a table when something is typed into a cell of it.
 *
 * @param table the table
 */
record CellEdits(SymptomTable table) {
  private SymptomEdits edits() {
    return new SymptomEdits(table);
  }

  /**
   * The page with a text in a cell.
   *
   * @throws Unchangeable when the text is not right there; says what would be
   */
  PageText typed(TableCell cell, String text) throws Unchangeable {
    if (cell instanceof TableCell.PageTitle) {
      return edits().title(text);
    } else if (cell instanceof TableCell.Zones) {
      return edits().zones(words(text));
    } else if (cell instanceof TableCell.Ask ask) {
      return edits().ask(ask.check(), text);
    } else if (cell instanceof TableCell.How how) {
      return edits().how(how.check(), text);
    } else if (cell instanceof TableCell.CheckMinutes minutes) {
      return edits().minutes(minutes.check(), text);
    } else if (cell instanceof TableCell.Answer answer) {
      return answer(answer, text);
    } else if (cell instanceof TableCell.CauseTitle cause) {
      return edits().causeTitle(cause.cause(), text);
    } else if (cell instanceof TableCell.Weight weight) {
      return edits().weight(weight.cause(), text);
    } else if (cell instanceof TableCell.Mend mend) {
      return edits().mend(mend.cause(), text);
    } else if (cell instanceof TableCell.Word word) {
      return word(word, likelihood(text));
    } else if (cell instanceof TableCell.NewCause) {
      return edits().addCause(text);
    } else if (cell instanceof TableCell.NewCheck) {
      return edits().addCheck(text);
    }
    throw new Unchangeable("There is nothing to fill in here.");
  }

  private static List<String> words(String text) {
    return Stream.of(text.split("[,;\\s]+")).filter(word -> !word.isEmpty()).toList();
  }

  private static Optional<String> likelihood(String text) throws Unchangeable {
    if (text.isBlank()) {
      return Optional.empty();
    }
    Optional<String> typed = LikelihoodKeys.typed(text);
    if (typed.isEmpty()) {
      throw new Unchangeable(
          "\u201c"
              + text.strip()
              + "\u201d is no likelihood. Write one of the words listed, or a per cent: 70 %.");
    }
    return typed;
  }

  /** The page with a likelihood; empty takes it out. */
  PageText word(TableCell.Word word, Optional<String> likelihood) throws Unchangeable {
    TableCheck check = table.checks().get(word.check());
    String cause =
        word.cause() == TableCell.Word.OTHERS
            ? Check.OTHERS
            : table.causes().get(word.cause()).id();
    return edits().likelihood(word.check(), check.answers().get(word.place()), cause, likelihood);
  }

  /** Several answers may be typed at once, with commas between them. */
  private PageText answer(TableCell.Answer answer, String text) throws Unchangeable {
    if (answer.place() < table.checks().get(answer.check()).answers().size()) {
      return edits().renameAnswer(answer.check(), answer.place(), text);
    }
    PageText page = table.page();
    for (String each : text.split("[,;/]")) {
      if (SymptomTable.read(page) instanceof SymptomTable now && !each.isBlank()) {
        page = new SymptomEdits(now).addAnswer(answer.check(), each);
      }
    }
    return page;
  }

  /** The page with a further answer of a check, behind the others. */
  PageText addAnswer(int check, String text) throws Unchangeable {
    return answer(new TableCell.Answer(check, table.checks().get(check).answers().size()), text);
  }

  /**
   * The page without what a cell says; of a cause's, check's or answer's name, without all of it.
   */
  PageText cleared(TableCell cell) throws Unchangeable {
    if (cell instanceof TableCell.CauseTitle cause) {
      return edits().removeCause(cause.cause());
    } else if (cell instanceof TableCell.Ask ask) {
      return edits().removeCheck(ask.check());
    } else if (cell instanceof TableCell.Answer answer
        && answer.place() < table.checks().get(answer.check()).answers().size()) {
      return edits().removeAnswer(answer.check(), answer.place());
    } else if (cell instanceof TableCell.Word word) {
      return word(word, Optional.empty());
    } else if (cell instanceof TableCell.Weight
        || cell instanceof TableCell.Mend
        || cell instanceof TableCell.How
        || cell instanceof TableCell.CheckMinutes) {
      return typed(cell, "");
    }
    return table.page();
  }
}
