package limberboard.desktop.trace;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.read.PictureBox;
import limberboard.library.page.Check;
import limberboard.print.picture.Picture;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.Trace;
import limberboard.words.AccessWords;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** One check: its cautions, the question in large type, how it is done, and buttons to answer. */
final class CheckCard extends Docked {
  private final transient TraceModel model;
  private final transient PagePictures pictures;
  private final transient Latest latest;
  private final transient PageTitles names;
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final Column picture = new Column(0);
  private final Row answers = Row.wrapping(10);
  private final transient OtherSteps others;
  private final transient AnswerKeys keys = new AnswerKeys(this, sheet);
  private final Wrapped weighing = Text.quiet("");
  private final CautionLines cautions;
  private transient Optional<Shown> shown = Optional.empty();

  /** The trace and step on the card; as long as they are equal, it stays as it is. */
  private record Shown(Trace trace, DoCheck step) {}

  /**
   * A card.
   *
   * @param whole shows the whole text of all cautions
   */
  CheckCard(
      TraceModel model,
      PagePictures pictures,
      Background background,
      PageTitles names,
      Runnable whole) {
    super(10);
    this.model = model;
    this.pictures = pictures;
    this.latest = new Latest(background);
    this.names = names;
    this.others = new OtherSteps(model);
    this.cautions =
        new CautionLines(
            model,
            "step-cautions",
            whole,
            () -> keys.question().ifPresent(JComponent::requestFocusInWindow));
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(answers);
    foot.add(weighing);
    weighing.setName("weighing");
    dock(sheet, foot);
  }

  /** The question takes the focus when the check comes up, so that no key answers it unread. */
  Optional<? extends JComponent> first() {
    return keys.question();
  }

  void show(Trace trace, DoCheck step) {
    weighing.setText(model.isWorking() ? "Weighing the answer \u2026" : "");
    Optional<Shown> wanted = Optional.of(new Shown(trace, step));
    if (!wanted.equals(shown)) {
      shown = wanted;
      fill(trace, step);
    }
  }

  private void fill(Trace trace, DoCheck step) {
    sheet.removeAll();
    picture.removeAll();
    picture.setVisible(false);
    Check check = step.check().check();
    sheet.add(Text.quiet(facts(trace, step)));
    cautions.show(model.cautions(step));
    sheet.add(cautions);
    Wrapped question = Text.question(check.ask());
    sheet.add(question);
    if (check.skill().ownerMay()) {
      addHow(trace, step, check);
    } else {
      sheet.add(Text.reading(PageTitles.otherHands(check.skill())));
    }
    addSafety(check);
    trace.explain().ifPresent(changed -> sheet.add(labelled("Your last answer", changed)));
    RemarkBox.addTo(sheet, trace);
    sheet.add(labelled("Why this check", step.why()));
    fillAnswers(trace, step, check);
    keys.of(question, answerButtons());
    sheet.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    revalidate();
    repaint();
  }

  private void addHow(Trace trace, DoCheck step, Check check) {
    if (!step.toOpen().isEmpty()) {
      sheet.add(labelled("First", AccessWords.opened(step.toOpen())));
    }
    sheet.add(Text.reading(check.how()));
    String tools = names.tools(check.tools(), trace.fault().fitting());
    if (!tools.isEmpty()) {
      sheet.add(labelled("Tools", tools));
    }
    sheet.add(picture);
    loadPicture(trace, check);
  }

  /** For a check that comes first for safety: what to do whatever the answer is. */
  private void addSafety(Check check) {
    check
        .safety()
        .ifPresent(safe -> sheet.add(labelled("If it is not so, or you can't tell", safe)));
  }

  private void loadPicture(Trace trace, Check check) {
    latest.drop();
    if (check.picture().isEmpty()) {
      return;
    }
    String page = trace.fault().page().path();
    String path = check.picture().get();
    boolean dark = Theme.isDark();
    latest.run(
        "Drawing the picture",
        () -> pictures.picture(page, path, dark),
        found -> found.ifPresent(read -> showPicture(read, check.ask())));
  }

  private void showPicture(Picture read, String shows) {
    picture.removeAll();
    picture.add(new PictureBox(read, shows));
    picture.setVisible(true);
    sheet.revalidate();
    sheet.repaint();
  }

  private static String facts(Trace trace, DoCheck step) {
    int number = trace.trail().size() + 1;
    Check check = step.check().check();
    return "Step "
        + number
        + ", a check. Takes "
        + Minutes.words(step.minutes())
        + (step.toOpen().isEmpty() ? "" : " with opening up")
        + ". "
        + Sentences.capital(SkillWords.whose(check.skill()))
        + ".";
  }

  private void fillAnswers(Trace trace, DoCheck step, Check check) {
    answers.removeAll();
    for (String answer : check.answers()) {
      JButton button =
          Buttons.large(
              Sentences.capital(Sentences.spoken(answer)),
              "answer-" + answer,
              () -> model.answer(check.id(), answer));
      answers.add(button);
    }
    JButton unsure = Buttons.large("Can't tell", "cant-tell", () -> model.cantTell(check.id()));
    answers.add(unsure);
    others.offer(trace, step);
    answers.add(others.button());
  }

  private List<AbstractButton> answerButtons() {
    return Stream.of(answers.getComponents())
        .filter(AbstractButton.class::isInstance)
        .map(AbstractButton.class::cast)
        .toList();
  }

  static Column labelled(String label, String text) {
    Column column = new Column(1);
    column.add(Text.caption(label));
    column.add(Text.plain(text));
    return column;
  }
}
