package limberboard.desktop.trace;

import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Session;
import limberboard.desktop.boats.WhichBoatPanel;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Copied;
import limberboard.desktop.read.CutReader;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.upkeep.log.MendedEntry;
import limberboard.library.Library;
import limberboard.print.sheet.ReplyText;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/** The place where a fault is traced to its cause and mended. */
public final class TracePlace implements Place {
  private static final int ICON = 26;
  private final TraceModel model;
  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final WhichBoatPanel which;
  private final BeforePanel before;
  private final CautionsPanel cautions;
  private final TracingPanel tracing;
  private Optional<TraceModel.At> shown = Optional.empty();

  /**
   * Puts the place together.
   *
   * @param tools what places are made with
   * @param model what is shown
   * @param aspects what of it is looked at
   * @param entry offers to write a mend into the boat's log
   * @param cases keeps mended faults as cases
   * @param clipboard takes text for other programs
   * @param answer takes the next step in words for a letter
   */
  public static TracePlace make(
      PlaceTools tools,
      TraceModel model,
      Aspects aspects,
      MendedEntry entry,
      MendedCases cases,
      Consumer<String> clipboard,
      Consumer<Copied> answer) {
    Session session = tools.session();
    Navigator navigator = tools.navigator();
    Background background = tools.background();
    CutReader reader = tools.reader(navigator::openPage);
    PageTitles names = new PageTitles(session);
    TracePapers papers = new TracePapers(session, model, tools.papers());
    TracingPanel tracing =
        new TracingPanel(
            model,
            new CheckCard(model, tools.drawings(), background, names, aspects::turnToCautions),
            new MendCard(model, reader),
            new YardCard(model, clipboard),
            new MendedCard(
                model, entry, cases, cause -> prevention(session, cause), navigator::openPage),
            new CausesPanel(model, navigator::openPage),
            aspects,
            new StepCautions(model),
            papers,
            deeds(model, papers, () -> copyAnswer(session, model, new Latest(background), answer)),
            tools.dividers());
    return new TracePlace(
        model,
        new WhichBoatPanel(
            session,
            "which-boat",
            "its model, year and what is fitted decide which causes, checks and mends are right"
                + " for it.",
            "Causes, checks and mends are cut to one boat.",
            navigator::newBoat),
        new BeforePanel(model, tools.drawings(), background),
        new CautionsPanel(model),
        tracing);
  }

  /** What can be done with the whole trace. */
  private static List<JButton> deeds(TraceModel model, TracePapers papers, Runnable copyAnswer) {
    return List.of(
        Buttons.plain(
            "Copy as answer",
            "copy-answer",
            "The next step in plain words for a letter, with all cautions",
            copyAnswer),
        Buttons.plain(
            "Print \u2026",
            "print-trace",
            "Where this trace stands, as a sheet",
            papers::printTrace),
        Buttons.plain(
            "Save as PDF \u2026",
            "save-trace",
            "Where this trace stands, as a sheet to print",
            papers::saveTrace),
        Buttons.plain(
            "Another symptom", "another-symptom", "This trace stays as it is", model::leave),
        Buttons.plain(
            "Start again",
            "start-again",
            "Takes all answers back; can be undone",
            model::startAgain));
  }

  private static void copyAnswer(
      Session session, TraceModel model, Latest latest, Consumer<Copied> copy) {
    Library library = session.library();
    Optional<Trace> trace = model.trace();
    Optional<NextStep> step = model.step();
    if (trace.isPresent() && step.isPresent()) {
      latest.run(
          "Writing the answer",
          () -> {
            ReplyText reply = new ReplyText(library, trace.get(), step.get());
            return new Copied(reply.plain(), Copied.document(reply.html()));
          },
          copy::accept);
    }
  }

  private static List<String> prevention(Session session, FaultCause cause) {
    return session
        .fitting()
        .map(fitting -> new Prevention(session.library(), fitting).of(cause.mend()))
        .orElse(List.of());
  }

  TracePlace(
      TraceModel model,
      WhichBoatPanel which,
      BeforePanel before,
      CautionsPanel cautions,
      TracingPanel tracing) {
    this.model = model;
    this.which = which;
    this.before = before;
    this.cautions = cautions;
    this.tracing = tracing;
    panel.add(which, Stage.NO_BOAT.name());
    panel.add(before, Stage.CHOOSING.name());
    panel.add(cautions, Stage.CAUTIONS.name());
    panel.add(tracing, Stage.CHECK.name());
    model.onChange(this::refresh);
    refresh();
  }

  @Override
  public Name name() {
    return new Name("trace", "Trace", 'T');
  }

  @Override
  public Icon icon() {
    return LineIcon.trace(ICON);
  }

  @Override
  public Optional<Runnable> print() {
    return tracing.print();
  }

  @Override
  public Optional<Find> find() {
    return tracing.find();
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    return switch (model.stage()) {
      case READING, NO_BOAT -> which.regions();
      case CHOOSING -> before.regions();
      case CAUTIONS -> cautions.regions();
      default -> tracing.regions();
    };
  }

  private void refresh() {
    Stage stage = model.stage();
    Stage card =
        switch (stage) {
          case READING -> Stage.NO_BOAT;
          case MEND, YARD, MENDED -> Stage.CHECK;
          default -> stage;
        };
    cards.show(panel, card.name());
    Optional<TraceModel.At> at = Optional.of(model.at());
    if (!at.equals(shown)) {
      shown = at;
      focus(stage);
    }
  }

  /** Puts the focus on what is to be done now, when this place is being worked in. */
  private void focus(Stage stage) {
    Optional<? extends JComponent> first =
        switch (stage) {
          case CAUTIONS -> Optional.of(cautions.first());
          case CHECK, MEND, YARD, MENDED -> tracing.first();
          case CHOOSING -> Optional.of(before.regions().get(0));
          default -> Optional.<JButton>empty();
        };
    if (panel.isShowing()) {
      first.ifPresent(JComponent::requestFocusInWindow);
    }
  }
}
