package limberboard.desktop.drills;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.drills.DrillChoice.Hidden;
import limberboard.desktop.drills.DrillChoice.OnBoat;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/**
 * The form of a drill: who, which symptom on which boat, what is hidden, which seed, how many
 * hints.
 */
final class ChoosePanel extends Docked {
  private final transient DrillChoice choice;
  private final JTextField student = new JTextField();
  private final JTextField seed = new JTextField();
  private final JTextField hints = new JTextField();
  private final ChoiceBox<Page<Symptom>> symptom;
  private final ChoiceBox<OnBoat> boat;
  private final ChoiceBox<Hidden> hidden;
  private final JButton begin;
  private final JButton next;
  private final Wrapped why = Text.plain("");
  private final Wrapped wrong = Text.caution("");
  private boolean showing;

  /**
   * A form.
   *
   * @param choice what is chosen
   * @param begin begins the drill
   * @param next chooses the next drill for a student
   * @param course opens a course
   */
  ChoosePanel(DrillChoice choice, Runnable begin, Consumer<String> next, Runnable course) {
    super(10);
    this.choice = choice;
    symptom =
        new ChoiceBox<>(
            "drill-symptom", "Symptom", Page::title, each -> this.choice.symptom(each.id()));
    boat = new ChoiceBox<>("drill-boat", "Boat", OnBoat::title, this.choice::boat);
    hidden = new ChoiceBox<>("drill-hidden", "Hidden fault", Hidden::title, this.choice::hide);
    this.begin = Buttons.main("Begin the drill", "drill-begin", begin);
    this.next =
        Buttons.plain(
            "Next drill",
            "drill-next",
            "The symptom that is new or has come back, and is expected to cost most",
            () -> this.choice.student().ifPresent(next));
    field(student, "drill-student", choice::student);
    field(seed, "drill-seed", choice::seed);
    field(hints, "drill-hints", choice::hints);
    RaisedColumn sheet = RaisedColumn.readable(12);
    sheet.add(Text.title("Find a hidden fault"));
    sheet.add(
        Text.reading(
            "The owner\u2019s letter is there, the boat, and everything that can be done. The cause"
                + " is not. Nothing of it touches a real trace, log or case."));
    sheet.add(form());
    sheet.add(why);
    sheet.add(wrong);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(
        Row.wrapping(
            10,
            this.begin,
            this.next,
            Buttons.plain(
                "Open a course \u2026", "drill-course", "Drills in order, from a file", course)));
    dock(sheet, foot);
    Keys.within(this, "control ENTER", this.begin::doClick);
    choice.onChange(this::refresh);
    refresh();
  }

  private Form form() {
    Form form = new Form(8);
    form.line("Student, name or number", student, student);
    form.line("Symptom", symptom, symptom);
    form.line("Boat", boat, boat);
    form.line("Hidden fault", hidden, hidden);
    form.line(
        "Seed",
        seed,
        Row.growing(
            8,
            0,
            seed,
            Buttons.plain(
                "Another",
                "drill-another-seed",
                "Another hidden fault; the same seed is the same fault",
                choice::anotherSeed)));
    form.line("Hints allowed", hints, hints);
    return form;
  }

  private void field(JTextField field, String name, Consumer<String> typed) {
    field.setName(name);
    When.typed(
        field,
        () -> {
          if (!showing) {
            typed.accept(field.getText());
          }
        });
    Keys.focused(field, "ENTER", () -> beginButton().doClick());
  }

  private JButton beginButton() {
    return begin;
  }

  private void refresh() {
    showing = true;
    symptom.show(choice.symptoms(), choice.page().orElse(null));
    boat.show(choice.boats(), choice.boat().orElse(null));
    hidden.show(choice.hiding(), choice.hidden());
    put(seed, choice.seed());
    put(hints, choice.hints());
    showing = false;
    say(wrong, choice.wrong());
    say(why, choice.why());
    begin.setEnabled(choice.wrong().isEmpty());
    Optional<String> who = choice.student();
    next.setEnabled(who.isPresent());
    next.setText(who.map(name -> "Next drill for " + name).orElse("Next drill for a student"));
    revalidate();
    repaint();
  }

  private static void put(JTextField field, String text) {
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
  }

  private static void say(Wrapped words, String text) {
    words.setText(text);
    words.setVisible(!text.isEmpty());
  }

  /** Puts a student's name into the form. */
  void name(String who) {
    student.setText(who);
  }

  JComponent first() {
    return student;
  }
}
