package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.letters.inbox.LetterState;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.Passage;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/**
 * The letter: what its writer said with the words that were recognised marked, and all else folded.
 */
final class LetterPanel extends Column {
  private static final Map<Passage.Kind, String> ASIDE =
      Map.of(
          Passage.Kind.QUOTED, "the earlier letter that is quoted",
          Passage.Kind.FORWARDED, "the letter that was sent on",
          Passage.Kind.SIGNATURE, "the signature",
          Passage.Kind.NOTICE, "what programs added");
  private final transient LetterModel model;
  private final transient Attachments attachments;
  private final ChoiceBox<LetterState> state;
  private final Wrapped since = Text.quiet("");
  private final Wrapped trouble = Text.caution("");
  private final transient List<Optional<LetterArea>> areas = new ArrayList<>();
  private Wrapped title = Text.title("");
  private transient Optional<Letter> shown = Optional.empty();
  private transient Optional<OpenLetter> updated = Optional.empty();
  private JComponent first = this;

  LetterPanel(LetterModel model, Attachments attachments) {
    super(8);
    this.model = model;
    this.attachments = attachments;
    state =
        new ChoiceBox<>(
            "letter-state",
            "How far the letter has come",
            each -> Sentences.capital(each.spoken()),
            model::state);
    padded(14, 8, 14, 10);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    Optional<Letter> letter = model.letter().map(open -> open.understood().letter());
    trouble.setText(model.trouble());
    trouble.setVisible(!model.trouble().isEmpty());
    if (!letter.equals(shown) || getComponentCount() == 0) {
      shown = letter;
      removeAll();
      areas.clear();
      if (letter.isPresent()) {
        fill(model.letter().orElseThrow().name(), letter.get());
      } else {
        nothing();
      }
      revalidate();
      repaint();
      LetterAndSeen.toTop(this);
    } else if (letter.isEmpty()) {
      removeAll();
      nothing();
      revalidate();
    }
    if (!model.letter().equals(updated)) {
      updated = model.letter();
      updated.ifPresent(this::update);
    }
  }

  private void nothing() {
    first = this;
    boolean reading = model.isChosen() && model.trouble().isEmpty();
    add(trouble);
    add(
        Text.quiet(
            reading
                ? "Reading the letter …"
                : model.isChosen() ? "Choose another one." : "Choose a letter at the left."));
  }

  private void fill(String name, Letter letter) {
    LetterHead head = letter.head();
    title = Text.title(head.subject().isBlank() ? "(without a subject)" : head.subject());
    add(title);
    add(Text.quiet(from(head)));
    Form form = new Form(8);
    form.line("State", state, Row.growing(8, 1, state, since));
    add(form);
    add(trouble);
    letter.remarks().forEach(remark -> add(Text.strong(remark)));
    int number = 0;
    for (Passage passage : letter.passages()) {
      number++;
      areas.add(passage(passage, number));
    }
    if (letter.own().isBlank()) {
      add(Text.quiet("The writer has added no words of their own."));
    }
    first =
        areas.stream()
            .flatMap(Optional::stream)
            .findFirst()
            .map(JComponent.class::cast)
            .orElse(state);
    first.setName(first == state ? state.getName() : "letter-text");
    if (!letter.attachments().isEmpty()) {
      add(Text.heading("Came with it"));
      letter.attachments().forEach(each -> add(new AttachmentRow(name, each, attachments)));
    }
  }

  private static String from(LetterHead head) {
    String who = head.from().map(Mailbox::shown).filter(s -> !s.isBlank()).orElse("nobody named");
    String address =
        head.from().filter(m -> !m.name().isEmpty()).map(m -> " <" + m.address() + ">").orElse("");
    String day = head.date().map(date -> ", " + DayText.written(date.toLocalDate())).orElse("");
    return "From " + who + address + day + (head.automatic() ? ", written by a program" : "");
  }

  private Optional<LetterArea> passage(Passage passage, int number) {
    if (passage.kind() != Passage.Kind.OWN) {
      add(
          new FoldedText(
              ASIDE.get(passage.kind()),
              LetterLines.joined(passage.text()),
              "letter-aside-" + number));
      return Optional.empty();
    }
    List<LetterArea> made = new ArrayList<>();
    add(
        FoldedText.of(
            LetterLines.joined(passage.text()),
            text -> {
              made.add(LetterArea.read(text, "The letter"));
              return made.get(0);
            },
            "the letter"));
    return Optional.of(made.get(0));
  }

  /** What changes while the same letter is shown. */
  private void update(OpenLetter open) {
    state.show(List.of(LetterState.values()), open.note().state());
    since.setText(open.note().since().map(day -> "since " + DayText.written(day)).orElse(""));
    MarkedWords marked = new MarkedWords(open.understood());
    List<List<LetterArea.Mark>> marks = marked.passages();
    for (int i = 0; i < areas.size(); i++) {
      List<LetterArea.Mark> here = marks.get(i);
      areas.get(i).ifPresent(area -> area.mark(here));
    }
    title.getHighlighter().removeAllHighlights();
    marked.inSubject(title.getText()).forEach(mark -> title.mark(mark.start(), mark.end()));
  }

  /** Where reading begins. */
  JComponent first() {
    return first;
  }
}
