package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.letters.recognise.Recognition;
import limberboard.library.value.LetterPart;
import limberboard.words.Sentences;

/**
 * What was recognised in the letter and why: danger, boat, symptoms, answers. Each can be
 * corrected, and what a person said stands there as said by them.
 */
final class RecognisedPanel extends Column {
  private final transient LetterModel model;
  private final transient TraceOfLetter trace;
  private final ChoiceBox<BoatChoice> boat;
  private final ChoiceBox<AnswerAs> about;
  private transient Optional<Understanding> shown = Optional.empty();

  /**
   * A panel.
   *
   * @param trace goes on with a symptom of the letter in the trace place
   */
  RecognisedPanel(LetterModel model, TraceOfLetter trace) {
    super(8);
    this.model = model;
    this.trace = trace;
    boat =
        new ChoiceBox<>(
            "letter-boat",
            "Which boat the letter is about",
            BoatChoice::words,
            chosen -> model.boat(chosen.said()));
    about = new ChoiceBox<>("letter-about", "What answer it gets", AnswerAs::words, model::about);
    padded(10, 8, 14, 10);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Optional<Understanding> now = model.letter().map(OpenLetter::understood);
    if (!now.equals(shown)) {
      shown = now;
      Refilled.fill(this, () -> now.ifPresent(this::fill));
    }
  }

  private void fill(Understanding letter) {
    add(Text.heading("Recognised"));
    add(urgent(letter));
    boat.show(BoatChoice.all(letter), BoatChoice.of(letter));
    about.show(AnswerAs.all(letter.workspace().library()), letter.about());
    Column which = new Column(2);
    which.add(boat);
    which.add(Text.quiet(letter.boatWhy()));
    Form form = new Form(8);
    form.line("Boat", boat, which);
    form.line("Answer", about, about);
    boat.getAccessibleContext().setAccessibleName("Which boat the letter is about");
    about.getAccessibleContext().setAccessibleName("What answer it gets");
    add(form);
    if (letter.symptoms().isEmpty()) {
      add(Text.quiet("No symptom of the library was recognised."));
    }
    letter.symptoms().forEach(id -> add(new SymptomPart(letter, id, model, trace)));
    add(new SymptomChoiceRow(letter, model));
  }

  private JComponent urgent(Understanding letter) {
    List<String> dangers = letter.urgent();
    if (!dangers.isEmpty()) {
      String words =
          letter.said().urgent().isPresent()
              ? ", as you said"
              : letter
                  .seen()
                  .urgent()
                  .map(Recognition.Urgent::words)
                  .map(w -> ", by " + SymptomPart.quoted(w))
                  .orElse("");
      return Row.worded(
          8,
          Text.caution("Urgent: " + String.join(", ", dangers) + words + "."),
          Buttons.plain("Not urgent", "letter-not-urgent", () -> model.urgent(Optional.empty())));
    }
    JButton say = Buttons.menu("It is urgent", () -> {});
    say.setName("letter-urgent");
    say.addActionListener(e -> dangers(letter, say));
    return Row.worded(
        8,
        Text.plain("No danger was found. The program misses some: read the letter for it."),
        say);
  }

  private void dangers(Understanding letter, JButton below) {
    JPopupMenu menu = new JPopupMenu("What is dangerous");
    List<String> all =
        new ArrayList<>(AnswerAs.matters(letter.workspace().library(), LetterPart.URGENT));
    if (all.isEmpty()) {
      all.add(Recognition.Urgent.UNNAMED);
    }
    for (String danger : all) {
      JMenuItem item = new JMenuItem(Sentences.capital(danger));
      item.setName("danger-" + danger);
      item.addActionListener(e -> model.urgent(Optional.of(danger)));
      menu.add(item);
    }
    menu.show(below, 0, below.getHeight());
  }

  /** Where correcting begins. */
  JComponent first() {
    return boat.isShowing() ? boat : this;
  }
}
