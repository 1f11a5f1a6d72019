package limberboard.desktop.drills;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.drills.StepOffer.Kind;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.ChoiceBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Form;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.read.PictureBox;
import limberboard.desktop.trace.CautionLines;
import limberboard.desktop.trace.PageTitles;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.library.page.Check;
import limberboard.trace.FaultCause;
import limberboard.words.Sentences;

/**
 * One step before it is done: its cautions first, then what it is, how it is done, and for a mend
 * or a hand-over how sure one is.
 */
final class StepCard extends Docked {
  private static final int CERTAIN = 100;
  private static final String NOBODY = "";
  private final transient DrillModel model;
  private final transient PagePictures pictures;
  private final transient Latest latest;
  private final transient PageTitles names;
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final Column picture = new Column(0);
  private final CautionLines cautions;
  private final JTextField sure = new JTextField(6);
  private final ChoiceBox<String> cause;
  private final Wrapped wrong = Text.caution("");
  private final JButton deed;
  private final JButton back;
  private Wrapped title = Text.question("");
  private transient Optional<StepOffer> shown = Optional.empty();
  private String named = NOBODY;

  /**
   * A card.
   *
   * @param model the drill
   * @param pictures the pictures of checks
   * @param background draws them
   * @param names what tools are called
   * @param whole shows the whole text of all cautions
   */
  StepCard(
      DrillModel model,
      PagePictures pictures,
      Background background,
      PageTitles names,
      Runnable whole) {
    super(10);
    this.model = model;
    this.pictures = pictures;
    this.latest = new Latest(background);
    this.names = names;
    cautions =
        new CautionLines(model, "drill-step-cautions", whole, () -> first().requestFocusInWindow());
    cause = new ChoiceBox<>("drill-cause", "The cause you name", this::causeTitle, this::name);
    deed = Buttons.main("Do it", "drill-do", this::press);
    back =
        Buttons.plain(
            "Back to all steps", "drill-back", "Escape", () -> this.model.open(Optional.empty()));
    sure.setName("drill-sure");
    Keys.focused(sure, "ENTER", this::press);
    When.typed(sure, () -> wrong.setVisible(false));
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, deed, back));
    dock(sheet, foot);
    Keys.within(this, "ESCAPE", back::doClick);
  }

  /** Where one goes on: the heading, so that no key does the step unread. */
  JComponent first() {
    return title;
  }

  /** The cautions that stand on the card and whose step has not been taken. */
  void heed() {
    shown.ifPresent(
        offer ->
            model.read(
                model.cautions(offer).stream()
                    .filter(each -> !model.read().isRead(each))
                    .toList()));
  }

  void show(DrillRun run, StepOffer offer) {
    if (shown.filter(offer::equals).isPresent()) {
      return;
    }
    shown = Optional.of(offer);
    sheet.removeAll();
    picture.removeAll();
    picture.setVisible(false);
    sure.setText("");
    name(NOBODY);
    wrong.setVisible(false);
    sheet.add(Text.quiet(offer.facts()));
    cautions.show(model.cautions(offer));
    sheet.add(cautions);
    title = Text.question(offer.title());
    new FocusedText(title, sheet).named("drill-step");
    sheet.add(title);
    if (offer.kind() == Kind.CHECK) {
      check(run, offer.id());
    } else if (offer.kind() == Kind.SECURE) {
      sheet.add(Text.reading("Nothing is looked at. Say that it is done, and it counts as safe."));
    } else if (offer.kind() == Kind.HINT) {
      sheet.add(Text.reading("The hint names the best step by what is known now."));
    }
    if (offer.kind() == Kind.MEND || offer.kind() == Kind.YARD) {
      howSure(run, offer);
    }
    deed.setText(offer.kind().deed());
    keys();
    sheet.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    revalidate();
    repaint();
  }

  /** Forgets what is shown, so that it is shown anew next time. */
  void forget() {
    shown = Optional.empty();
  }

  private void keys() {
    List<JComponent> stops = new ArrayList<>(List.of(title));
    if (cause.isShowing() || shown.filter(each -> each.kind() == Kind.YARD).isPresent()) {
      stops.add(cause);
    }
    if (shown.filter(each -> each.asksHowSure()).isPresent()) {
      stops.add(sure);
    }
    stops.add(deed);
    JComponent after = stops.get(1);
    Keys.focused(title, "DOWN", after::requestFocusInWindow);
    Keys.focused(title, "RIGHT", after::requestFocusInWindow);
    Keys.focused(deed, "RIGHT", back::requestFocusInWindow);
    Keys.focused(back, "LEFT", deed::requestFocusInWindow);
    Keys.focused(deed, "UP", title::requestFocusInWindow);
  }

  private void check(DrillRun run, String id) {
    Check check = run.drill().fault().checks().get(run.drill().fault().checkNumber(id)).check();
    sheet.add(
        Text.reading(
            check.skill().ownerMay()
                ? check.how()
                : "In a drill: it is done by who may do it, and you are told the answer. Who that"
                    + " is stands above."));
    String tools = names.tools(check.tools(), run.drill().fault().fitting());
    if (!tools.isEmpty() && check.skill().ownerMay()) {
      sheet.add(labelled("Tools", tools));
    }
    sheet.add(
        labelled(
            "It can say",
            String.join(", ", check.answers().stream().map(Sentences::spoken).toList())));
    check.safety().ifPresent(safe -> sheet.add(labelled("This comes first for safety", safe)));
    sheet.add(picture);
    check
        .picture()
        .filter(path -> check.skill().ownerMay())
        .ifPresent(path -> draw(run, check, path));
  }

  private void draw(DrillRun run, Check check, String path) {
    String page = run.drill().fault().page().path();
    boolean dark = Theme.isDark();
    latest.run(
        "Drawing the picture",
        () -> pictures.picture(page, path, dark),
        found ->
            found.ifPresent(
                read -> {
                  picture.removeAll();
                  picture.add(new PictureBox(read, check.ask()));
                  picture.setVisible(true);
                  sheet.revalidate();
                  sheet.repaint();
                }));
  }

  private void howSure(DrillRun run, StepOffer offer) {
    Form form = new Form(8);
    if (offer.kind() == Kind.YARD) {
      List<String> causes = new ArrayList<>(List.of(NOBODY));
      run.drill().fault().causes().stream()
          .filter(each -> !each.isSomethingElse())
          .map(FaultCause::id)
          .forEach(causes::add);
      cause.show(causes, NOBODY);
      form.line("The cause you name", cause, cause);
    }
    form.line("How sure are you, in per cent?", sure, sure);
    sheet.add(form);
    sheet.add(wrong);
    sheet.add(
        Text.quiet(
            "Saying what you think pays best: being sure and wrong costs more than being unsure."));
  }

  private String causeTitle(String id) {
    if (id.isEmpty()) {
      return "None: let the yard look for it";
    }
    return model
        .run()
        .map(run -> run.drill().fault())
        .map(fault -> fault.causes().get(fault.causeNumber(id)).title())
        .orElse(id);
  }

  private void name(String id) {
    named = id;
    sure.setEnabled(shown.filter(each -> each.kind() == Kind.YARD).isEmpty() || !id.isEmpty());
  }

  private void press() {
    StepOffer offer = shown.orElseThrow();
    boolean asks = offer.asksHowSure() || offer.kind() == Kind.YARD && !named.isEmpty();
    if (!asks) {
      model.take(offer.step(Optional.empty()));
      return;
    }
    OptionalInt said = said();
    if (said.isEmpty()) {
      wrong.setText("Say how sure you are: a whole number from 0 to 100.");
      wrong.setVisible(true);
      sure.requestFocusInWindow();
      sheet.revalidate();
      return;
    }
    String id = offer.kind() == Kind.YARD ? named : offer.id();
    model.take(offer.step(Optional.of(new DrillStep.Named(id, said.getAsInt()))));
  }

  private OptionalInt said() {
    try {
      int number = Integer.parseInt(sure.getText().replace("%", "").strip());
      return number < 0 || number > CERTAIN ? OptionalInt.empty() : OptionalInt.of(number);
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }

  private static Column labelled(String label, String text) {
    Column column = new Column(1);
    column.add(Text.caption(label));
    column.add(Text.plain(text));
    return column;
  }
}
