package limberboard.desktop.trace;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.base.Place;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.LimitedHeight;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.When;
import limberboard.desktop.tree.TreePanel;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/** A trace under way: the step, the causes beside it, the answers below, cautions on top. */
final class TracingPanel extends JPanel {
  private static final int LEAST_WIDTH = 800;
  private static final int LOW = 700;
  private static final int MIDDLING = 860;
  private static final int BAND_SHARE = 8;
  private static final String SAFETY = "SAFETY";
  private final transient TraceModel model;
  private final CheckCard check;
  private final SafetyCard safety;
  private final MendCard mend;
  private final YardCard yard;
  private final MendedCard mended;
  private final CardLayout cards = new CardLayout();
  private final JPanel steps = new JPanel(cards);
  private final TrailPanel trail;
  private final CausesPanel causes;
  private final transient TrailSlots slots;
  private final CautionBand band;
  private final WholeCautions whole;
  private final transient TracePapers papers;
  private final transient Aspects aspects;
  private final TraceBar bar;
  private final WhyPanel why;
  private final TreePanel tree;
  private final CardLayout views = new CardLayout();
  private final JPanel view = new JPanel(views);
  private final Column top = new Column(2);
  private Sides sides;
  private transient Optional<TraceModel.At> shown = Optional.empty();

  TracingPanel(
      TraceModel model,
      CheckCard check,
      MendCard mend,
      YardCard yard,
      MendedCard mended,
      CausesPanel causes,
      Aspects aspects,
      TreePanel.Cautions cautions,
      TracePapers papers,
      List<JButton> deeds,
      Divider.Memory dividers) {
    super(new BorderLayout(0, 10));
    this.model = model;
    this.check = check;
    this.safety = new SafetyCard(model, aspects::turnToCautions);
    this.mend = mend;
    this.yard = yard;
    this.mended = mended;
    this.causes = causes;
    this.papers = papers;
    this.aspects = aspects;
    this.bar = new TraceBar(model, aspects, deeds, this::showCauses);
    this.why = new WhyPanel(model, aspects.why(), () -> aspects.look(Aspect.STEP), dividers);
    this.tree = new TreePanel(aspects.tree(), cautions, papers.trees(), dividers);
    this.trail = new TrailPanel(model);
    this.band = new CautionBand(model, aspects::turnToCautions, this::focusFirst);
    this.whole = new WholeCautions(aspects::turnToCautions);
    this.slots = new TrailSlots(trail, steps, causes);
    setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    steps.setOpaque(false);
    steps.setName("trace-step");
    steps.add(check, Stage.CHECK.name());
    steps.add(safety, SAFETY);
    steps.add(mend, Stage.MEND.name());
    steps.add(yard, Stage.YARD.name());
    steps.add(mended, Stage.MENDED.name());
    view.setOpaque(false);
    view.add(middle(dividers), Aspect.STEP.name());
    view.add(why, Aspect.WHY.name());
    view.add(tree, Aspect.TREE.name());
    view.add(whole, Aspect.CAUTIONS.name());
    top.add(bar);
    top.add(new LimitedHeight(band, this::mostForBand));
    Keys.within(this, "F7", aspects::turnToCautions);
    Keys.within(this, "F8", this::readHere);
    Keys.within(this, "control Z", model::undo);
    Keys.within(this, "control shift Z", model::redo);
    Keys.within(this, "control Y", model::redo);
    add(top, BorderLayout.NORTH);
    add(view, BorderLayout.CENTER);
    model.onChange(this::refresh);
    aspects.onChange(this::look);
    When.resized(this, () -> fit());
    refresh();
  }

  /** What is looked at has changed. */
  private void look() {
    boolean back = whole.isVisible() && aspects.now() == Aspect.STEP;
    if (aspects.now() == Aspect.CAUTIONS) {
      whole.show(model.cautionsHere());
    }
    views.show(view, aspects.now().name());
    band.setAside(aspects.now() == Aspect.CAUTIONS);
    if (back) {
      focusFirst();
    } else {
      regions().get(0).requestFocusInWindow();
    }
    revalidate();
  }

  private void focusFirst() {
    first().ifPresent(JComponent::requestFocusInWindow);
  }

  /** All cautions that stand here have been read. */
  private void readHere() {
    model.read(model.cautionsHere());
    focusFirst();
  }

  /** Whether there is so little height that whatever can be is folded away. */
  private boolean isLow() {
    return getHeight() > 0 && getHeight() < UIScale.scale(LOW);
  }

  private int mostForBand() {
    return getHeight() / (isLow() ? BAND_SHARE : 3);
  }

  private void showCauses(boolean wanted) {
    if (aspects.now() != Aspect.STEP) {
      aspects.look(Aspect.STEP);
    }
    if (wanted) {
      sides.showOther();
    } else {
      sides.showMain();
      bar.stepIsShown();
    }
  }

  private void fit() {
    boolean behind = sides.isNarrow();
    setBorder(
        isLow()
            ? BorderFactory.createEmptyBorder(2, 12, 2, 12)
            : BorderFactory.createEmptyBorder(12, 18, 12, 18));
    ((BorderLayout) getLayout()).setVgap(isLow() ? 2 : 10);
    bar.fit(isLow(), behind);
    mend.fit(isLow(), getHeight() > 0 && getHeight() < UIScale.scale(MIDDLING));
    place(model.stage());
    revalidate();
  }

  /** Prints what is looked at: the tree, or else where the trace stands. */
  Optional<Runnable> print() {
    if (!model.stage().isUnderWay()) {
      return Optional.empty();
    }
    return aspects.now() == Aspect.TREE ? tree.print() : Optional.of(papers::printTrace);
  }

  /** Searches in the page of a mend. */
  Optional<Place.Find> find() {
    boolean page = aspects.now() == Aspect.STEP && model.stage() == Stage.MEND;
    return page ? Optional.of(mend.find()) : Optional.empty();
  }

  private JComponent middle(Divider.Memory dividers) {
    sides =
        new Sides(
                LEAST_WIDTH,
                "Next step",
                slots.left(),
                "Causes and answers",
                slots.right(),
                "trace-causes",
                0.68,
                dividers)
            .withoutTabs();
    sides.onFold(this::fit);

    When.resized(slots.left(), () -> place(model.stage()));
    return sides;
  }

  private void place(Stage stage) {
    slots.place(stage, sides.isNarrow() || isLow());
  }

  List<JComponent> regions() {
    return switch (aspects.now()) {
      case STEP -> List.of(steps, trail, causes);
      case WHY -> why.regions();
      case TREE -> tree.regions();
      case CAUTIONS -> whole.regions();
    };
  }

  /** The control that takes the focus when a step comes up. */
  Optional<? extends JComponent> first() {
    if (aspects.now() != Aspect.STEP) {
      return Optional.of(regions().get(0));
    }
    return switch (model.stage()) {
      case CHECK -> isSafety() ? Optional.of(safety.first()) : check.first();
      case MEND -> Optional.of(mend.first());
      case YARD -> Optional.of(yard.first());
      case MENDED -> Optional.of(mended.first());
      default -> Optional.empty();
    };
  }

  private void refresh() {
    Stage stage = model.stage();
    Optional<Trace> trace = model.trace();
    if (trace.isEmpty() || !stage.isUnderWay()) {
      return;
    }
    Boat boat = trace.get().fault().fitting().boat();
    bar.refresh(trace.get().fault().page().title() + ", on " + boat.name());
    fill(trace.get(), stage);
    Optional<TraceModel.At> at = Optional.of(model.at());
    if (!at.equals(shown)) {
      shown = at;
      sides.showMain();
      bar.stepIsShown();
    }
    cards.show(steps, isSafety() ? SAFETY : stage.name());
    place(stage);
  }

  private boolean isSafety() {
    return model.step().filter(NextStep.MakeSafe.class::isInstance).isPresent();
  }

  private void fill(Trace trace, Stage stage) {
    NextStep step = model.step().orElseThrow();
    if (stage == Stage.MENDED) {
      mended.show(trace, model.mended());
    } else if (step instanceof NextStep.DoCheck doCheck) {
      check.show(trace, doCheck);
    } else if (step instanceof NextStep.MakeSafe safe) {
      safety.show(trace, safe);
    } else if (step instanceof NextStep.DoMend doMend) {
      mend.show(trace, doMend);
    } else if (step instanceof NextStep.CallYard callYard) {
      yard.show(trace, callYard);
    }
  }
}
