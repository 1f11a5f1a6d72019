package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.library.page.Check;
import limberboard.words.ChanceWords;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * A symptom that the letter may tell of: whether it does, how likely that was thought and by which
 * words; and once it does, the answers to its checks.
 */
final class SymptomPart extends Column {
  private static final int INDENT = 24;
  private static final double SUREST = 0.99;
  private final Understanding letter;
  private final String id;
  private final LetterModel model;

  SymptomPart(Understanding letter, String id, LetterModel model, TraceOfLetter trace) {
    super(4);
    this.letter = letter;
    this.id = id;
    this.model = model;
    boolean tells = letter.chosen().contains(id);
    JCheckBox box = new JCheckBox();
    box.setOpaque(false);
    box.setSelected(tells);
    box.setName("letter-symptom-" + id);
    String title = letter.page(id).orElseThrow().title();
    box.getAccessibleContext().setAccessibleName(title + ", " + why());
    box.addActionListener(e -> model.symptom(id, box.isSelected()));
    Keys.focused(box, "ENTER", box::doClick);
    add(Row.growing(4, 1, box, Text.strong(title)));
    Column below = new Column(4);
    below.padded(0, INDENT, 2, 0);
    below.add(Text.quiet(why()));
    if (!letter.fits(id)) {
      below.add(Text.strong("This boat cannot have it. Is it another boat?"));
    }
    if (tells) {
      answers(below);
      JButton go =
          Buttons.plain(
              "Trace with these answers",
              "letter-trace-" + id,
              "Goes to the Trace place",
              () -> trace.go(letter, id));
      go.setEnabled(letter.fitting().isPresent() && letter.fits(id));
      below.add(Row.wrapping(6, go));
    }
    add(below);
  }

  private String why() {
    return letter.suspect(id).map(SymptomPart::why).orElse("As you said.");
  }

  /** Words of a letter in quotes, in one line. */
  static String quoted(Words words) {
    return quoted(words.written());
  }

  private static String quoted(String words) {
    return Sentences.quoted(words.replaceAll("\\s+", " "));
  }

  private static String why(Suspect suspect) {
    double chance = Math.min(SUREST, suspect.chance());
    String words =
        Sentences.list(
            suspect.words().stream().map(SymptomPart::quoted).distinct().toList(), "and");
    return Sentences.capital(ChanceWords.of(chance))
        + ", "
        + PerCent.words(chance)
        + " (an estimate)"
        + (words.isEmpty() ? "." : ", by " + words + ".");
  }

  /** The answers that are known, each with its words, and those that a person can add. */
  private void answers(Column below) {
    Map<String, String> given = letter.answers(id);
    List<Addable> open = new ArrayList<>();
    for (Check check : letter.page(id).orElseThrow().details().checks()) {
      if (given.containsKey(check.id())) {
        below.add(Text.plain(check.ask()));
        below.add(answer(check, given.get(check.id())));
      } else {
        answersOf(check).forEach(answer -> open.add(new Addable(check, answer)));
      }
    }
    if (!open.isEmpty()) {
      ChoiceBox<Addable> more =
          new ChoiceBox<Addable>(
                  "letter-more-" + id,
                  "Another answer that the letter gives",
                  Addable::words,
                  chosen -> model.answer(id, chosen.check().id(), chosen.answer()))
              .asking(given.isEmpty() ? "No answer was read; add one …" : "Add another answer …");
      more.show(open, null);
      below.add(more);
    }
  }

  private Row answer(Check check, String now) {
    ChoiceBox<String> box =
        new ChoiceBox<>(
            "letter-answer-" + check.id(),
            check.ask(),
            SymptomPart::spoken,
            answer -> model.answer(id, check.id(), answer));
    box.show(answersOf(check), now);
    String by =
        letter.words(id, check.id()).map(words -> "by " + quoted(words)).orElse("as you said");
    JButton back =
        Buttons.plain(
            "Take back",
            "letter-take-back-" + check.id(),
            "The letter does not say this",
            () -> model.answer(id, check.id(), LetterSaid.TAKEN_BACK));
    back.getAccessibleContext().setAccessibleName("Take back: " + check.ask());
    return Row.worded(8, Text.quiet(by), box, back);
  }

  private static List<String> answersOf(Check check) {
    List<String> all = new ArrayList<>(check.answers());
    all.add(LetterSaid.CANNOT_TELL);
    return all;
  }

  /** An answer that can be added. */
  private record Addable(Check check, String answer) {
    String words() {
      return check.ask() + " " + Sentences.capital(spoken(answer)) + ".";
    }
  }

  private static String spoken(String answer) {
    return answer.equals(LetterSaid.CANNOT_TELL) ? "cannot tell" : Sentences.spoken(answer);
  }
}
