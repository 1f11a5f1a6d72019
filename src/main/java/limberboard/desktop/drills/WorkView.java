package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.trace.PageTitles;
import limberboard.desktop.trace.WholeCautions;
import limberboard.drill.Drill;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.words.CountWords;

/** The drill as it is played: the letter, then step by step, with what was found beside it. */
final class WorkView implements View {
  private static final int LEAST = 640;
  private static final String NONE = "none";
  private static final String LETTER = "letter";
  private static final String LIST = "list";
  private static final String STEP = "step";
  private static final String WHOLE = "whole";
  private static final String WAITING = "waiting";
  private final DrillModel model;
  private final CardLayout cards = new CardLayout();
  private final JPanel main = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout(0, 8));
  private final LetterSheet letter;
  private final StepList steps;
  private final StepCard step;
  private final WholeCautions whole;
  private final WorkSide side;
  private final DrillWaiting waiting;
  private final Sides sides;
  private final Wrapped nothing = Text.reading("");
  private boolean inFull;
  private Optional<At> shown = Optional.empty();
  private Optional<Drill> lettered = Optional.empty();

  /** Where the drill stands; the focus moves when it changes. */
  private record At(String card, Optional<StepOffer> open, int done) {}

  /** The view of a drill. */
  static WorkView make(DrillModel model, PlaceTools tools) {
    Runnable[] whole = {() -> {}};
    Background drawing = tools.background();
    WorkView made =
        new WorkView(
            model,
            new StepCard(
                model,
                tools.drawings(),
                drawing,
                new PageTitles(tools.session()),
                () -> whole[0].run()),
            new StepList(model, () -> whole[0].run()),
            new WorkSide(new DrawnBoat(tools.drawings(), drawing)),
            tools.dividers());
    whole[0] = made::turnToCautions;
    return made;
  }

  WorkView(DrillModel model, StepCard step, StepList steps, WorkSide side, Divider.Memory memory) {
    this.model = model;
    this.step = step;
    this.steps = steps;
    this.side = side;
    letter = new LetterSheet(model::letterRead);
    whole = new WholeCautions(this::turnToCautions);
    waiting =
        new DrillWaiting(
            "The drill is being marked",
            "drill-stop",
            model::isMarking,
            () -> CountWords.of(model.markedSoFar(), "step") + " gone through so far.",
            model::stop,
            model::mark);
    Column empty = new Column(8).padded(24, 8, 8, 8);
    empty.add(nothing);
    main.setOpaque(false);
    main.add(empty, NONE);
    main.add(letter, LETTER);
    main.add(steps, LIST);
    main.add(step, STEP);
    main.add(whole, WHOLE);
    main.add(waiting, WAITING);
    panel.setOpaque(false);
    sides = new Sides(LEAST, "Work", main, "Log and letter", side, "drills-work", 0.62, memory);
    panel.add(sides, BorderLayout.CENTER);
    for (JComponent each : List.of(panel, main, side)) {
      Keys.within(each, "F7", this::turnToCautions);
      Keys.within(each, "F8", this::heed);
    }
    model.onChange(this::refresh);
    refresh();
  }

  /** Shows the whole text of the cautions, or the drill again. */
  void turnToCautions() {
    inFull = !inFull && model.run().isPresent();
    if (inFull) {
      whole.show(model.inFull());
    }
    refresh();
  }

  private void heed() {
    if (model.stage() != DrillStage.WORKING) {
      return;
    }
    if (model.open().isPresent()) {
      step.heed();
    } else {
      model.read(model.cautions().stream().filter(each -> !model.read().isRead(each)).toList());
    }
  }

  private void refresh() {
    Optional<DrillRun> run = model.run();
    nothing.setText(
        model.stage() == DrillStage.MARKED
            ? "This drill is over. \u201cLook back\u201d goes through it; \u201cChoose\u201d begins"
                + " another one."
            : "No drill has been begun. Choose one first.");
    String card =
        switch (model.stage()) {
          case NONE, MARKED -> NONE;
          case LETTER -> LETTER;
          case OVER -> WAITING;
          case WORKING -> model.open().isPresent() ? STEP : LIST;
        };
    run.ifPresent(now -> show(now, card));
    inFull = inFull && run.isPresent() && !card.equals(NONE);
    String front = inFull ? WHOLE : card;
    cards.show(main, front);
    waiting.refresh();
    At at = new At(front, model.open(), run.map(now -> works(now)).orElse(0));
    if (!Optional.of(at).equals(shown)) {
      shown = Optional.of(at);
      if (panel.isShowing()) {
        sides.showMain();
        Later.focus(first());
      }
    }
  }

  /** Taking the step of a caution leaves the focus where it is. */
  private static int works(DrillRun run) {
    return (int)
        run.done().stream().filter(each -> !(each.step() instanceof DrillStep.Heed)).count();
  }

  private void show(DrillRun run, String card) {
    side.show(run);
    switch (card) {
      case LETTER -> {
        if (run.done().isEmpty() && !letterOf(run)) {
          letter.show(run.drill());
        }
      }
      case LIST -> steps.show(run);
      case STEP -> step.show(run, model.open().orElseThrow());
      default -> {
        // nothing of the drill is shown
      }
    }
    if (!card.equals(STEP)) {
      step.forget();
    }
  }

  private boolean letterOf(DrillRun run) {
    boolean same = lettered.filter(each -> each == run.drill()).isPresent();
    lettered = Optional.of(run.drill());
    return same;
  }

  private JComponent first() {
    if (inFull) {
      return whole.first();
    }
    return switch (model.stage()) {
      case LETTER -> letter.first();
      case OVER -> waiting.first();
      case WORKING -> model.open().isPresent() ? step.first() : steps.first();
      case NONE, MARKED -> side.first();
    };
  }

  @Override
  public Name name() {
    return new Name("work", "Work", 'W');
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(List.of(first()));
    if (model.stage() == DrillStage.WORKING && model.open().isEmpty() && !inFull) {
      regions.addAll(steps.regions().subList(1, 2));
    }
    regions.add(side.first());
    return regions;
  }
}
