package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.drill.DrillStep;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.StepMark;
import limberboard.words.Sentences;

/** A drill, gone through afterwards: its marks, its steps, and what was best at each of them. */
final class LookBackView implements View {
  private static final int LEAST = 640;
  private static final int WHOLE = -1;
  private final DrillModel model;
  private final Column marks = new Column(6).padded(0, 0, 8, 8);
  private final CardList<Integer> steps;
  private final RaisedColumn detail = RaisedColumn.readable(8);
  private final JPanel left = new JPanel(new BorderLayout());
  private final JButton save;
  private final JButton next;
  private final Sides sides;
  private Optional<DrillMark> shown = Optional.empty();

  /**
   * The view.
   *
   * @param model the drill
   * @param save saves what was played as a file
   * @param next goes to the next drill
   * @param dividers remembers the divider
   */
  LookBackView(DrillModel model, Runnable save, Runnable next, Divider.Memory dividers) {
    this.model = model;
    this.save =
        Buttons.plain(
            "Save as result \u2026",
            "drill-save",
            "Ctrl+S: what was played, for a trainer to gather",
            save);
    this.next = Buttons.main("Next drill", "drill-go-on", next);
    steps = new CardList<Integer>("Steps", this::card).framed();
    steps.setName("drill-marked-steps");
    steps.addListSelectionListener(e -> steps.selected().ifPresent(this::show));
    left.setOpaque(false);
    left.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 8));
    left.add(new StackedList(marks, steps, new Column(0)));
    Keys.within(left, "control S", this.save::doClick);
    sides =
        new Sides(
            LEAST,
            "Marks and steps",
            left,
            "The step",
            detail.scrolling(),
            "drills-look-back",
            0.5,
            dividers);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    if (model.marks().equals(shown) && !marksAreEmpty()) {
      return;
    }
    shown = model.marks();
    marks.removeAll();
    detail.removeAll();
    shown.ifPresentOrElse(this::show, this::nothing);
    marks.revalidate();
    left.repaint();
    detail.revalidate();
    detail.repaint();
  }

  private boolean marksAreEmpty() {
    return marks.getComponentCount() == 0;
  }

  private void nothing() {
    marks.add(Text.title("Look back"));
    marks.add(
        Text.reading(
            "When a drill is over, its marks stand here, and each step with what was known, what"
                + " was best, and why."));
    steps.show(List.of());
  }

  private void show(DrillMark mark) {
    marks.add(
        Text.quiet(
            model.student().map(who -> who + ": ").orElse("")
                + DrillCourse.title(mark.run().drill())));
    marks.add(Text.title(LookBackWords.cause(mark)));
    marks.add(Text.heading(LookBackWords.skill(mark)));
    marks.add(Row.wrapping(8, next, save));
    steps.show(IntStream.range(WHOLE, mark.steps().size()).boxed().toList());
    steps.setSelectedIndex(0);
    showWhole(mark);
  }

  private void showWhole(DrillMark mark) {
    detail.removeAll();
    detail.add(Text.title("The whole drill"));
    LookBackWords.lines(mark).forEach(line -> detail.add(Text.reading(line)));
    detail.add(
        mark.dangers().isEmpty()
            ? Text.reading(LookBackWords.dangers(mark))
            : Text.caution(LookBackWords.dangers(mark)));
    mark.dangers().forEach(danger -> detail.add(Text.plain(danger.said())));
    shownAnew();
  }

  private void shownAnew() {
    detail.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    detail.revalidate();
    detail.repaint();
  }

  private static boolean isHeed(StepMark step) {
    return step.done().step() instanceof DrillStep.Heed;
  }

  private Card card(Integer number) {
    DrillMark mark = shown.orElseThrow();
    if (number == WHOLE) {
      return Card.of("The whole drill", LookBackWords.brief(mark));
    }
    StepMark step = mark.steps().get(number);
    String title = number + 1 + ". " + StepOffers.title(mark.run(), step.done().step());
    Card card = Card.of(title, StepOffers.said(step.done())).noting(LookBackWords.cost(step));
    if (!step.dangers().isEmpty()) {
      return card.ofKind("danger");
    }
    return isHeed(step) ? card.second() : card;
  }

  private void show(Integer number) {
    DrillMark mark = shown.orElseThrow();
    if (number == WHOLE) {
      showWhole(mark);
      return;
    }
    StepMark step = mark.steps().get(number);
    detail.removeAll();
    detail.add(Text.quiet("Step " + (number + 1) + " of " + mark.steps().size()));
    detail.add(Text.title(StepOffers.title(mark.run(), step.done().step())));
    detail.add(Text.reading(StepOffers.said(step.done())));
    step.dangers().forEach(danger -> detail.add(Text.caution("Danger: " + danger.said())));
    detail.add(Text.caption("What was known before it"));
    detail.add(Text.plain(LookBackWords.known(step)));
    detail.add(Text.caption("Best step"));
    if (!step.best().cautions().isEmpty()) {
      detail.add(CautionBox.brief(step.best().cautions()));
    }
    detail.add(Text.strong(LookBackWords.best(step)));
    detail.add(Text.plain(Sentences.capital(step.best().why())));
    model
        .votes()
        .of(number)
        .ifPresent(
            vote -> {
              detail.add(Text.caption("The class voted"));
              detail.add(Text.plain(vote.words()));
            });
    String cost = LookBackWords.cost(step);
    detail.add(Text.caption("What it cost"));
    detail.add(
        Text.plain(
            cost.isEmpty() ? "Nothing, or less than half a minute on average." : cost + "."));
    if (!step.meaning().isEmpty()) {
      detail.add(Text.caption("What the answer meant"));
      detail.add(Text.plain(step.meaning()));
    }
    shownAnew();
  }

  /** Says what the next drill is. */
  void nextIs(String title) {
    next.setText(title);
  }

  @Override
  public Name name() {
    return new Name("look-back", "Look back", 'K');
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return shown.isEmpty() ? List.of(steps) : List.of(steps, next, save);
  }
}
