package limberboard.desktop.upkeep;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import limberboard.boat.Boat;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.AspectButtons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.LimitedHeight;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Widths;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.state.UpkeepModel;

/**
 * The top of the place: whose upkeep, which aspect, which day; then questions and what was done.
 */
final class UpkeepTop extends Column {
  private static final int ONE_LINE = 1100;
  private final transient UpkeepModel model;
  private final Wrapped what = Text.heading("");
  private final AspectButtons aspects;
  private final DayField day;
  private final QuestionsBox questions;
  private final LimitedHeight limited;
  private final WrittenBand written;
  private boolean roomy;

  UpkeepTop(UpkeepModel model, LogModel log, List<View> all, Consumer<View> look, Runnable back) {
    super(8);
    this.model = model;
    aspects = new AspectButtons("upkeep", all, look.andThen(aspect -> seen(log)));
    day = new DayField(model);
    questions = new QuestionsBox(model);
    limited = new LimitedHeight(questions, this::mostForQuestions);
    written = new WrittenBand(model, log, back);
    When.resized(this, () -> fill());
    model.onChange(this::refresh);
    refresh();
    build(true);
  }

  /** Whoever goes on to another aspect has seen what was written; what failed stays. */
  private static void seen(LogModel log) {
    if (log.remark().filter(remark -> !remark.failed()).isPresent()) {
      log.dismiss();
    }
  }

  /** Marks the aspect that is shown. */
  void mark(View aspect) {
    aspects.mark(aspect);
  }

  /** Shows the button of an aspect, or not. */
  void offer(String aspect, boolean shown) {
    if (aspects.offer(aspect, shown)) {
      revalidate();
    }
  }

  /** Puts the focus where the day is typed. */
  void focusDay() {
    day.focus();
  }

  List<JComponent> regions() {
    return List.of(aspects, day);
  }

  /** Questions leave the height to what is looked at, and scroll. */
  private int mostForQuestions() {
    JRootPane root = getRootPane();
    int height = root == null ? 0 : root.getHeight();
    if (height == 0) {
      return Integer.MAX_VALUE;
    }
    return height / (questions.isWhole() ? 3 : Widths.isInLowWindow(this) ? 7 : 5);
  }

  private void refresh() {
    limited.setVisible(!model.questions().isEmpty());
    what.setText(model.boat().map(Boat::name).map(name -> "Upkeep of " + name).orElse(""));
  }

  private void fill() {
    boolean wanted = getWidth() >= UIScale.scale(ONE_LINE);
    if (wanted != roomy) {
      build(wanted);
    }
  }

  private void build(boolean oneLine) {
    roomy = oneLine;
    removeAll();
    if (oneLine) {
      add(Row.growing(12, 0, what, aspects, day));
    } else {
      add(Row.growing(12, 0, what, day));
      add(aspects);
    }
    add(day.words());
    add(limited);
    add(written);
    revalidate();
  }
}
