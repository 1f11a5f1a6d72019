package limberboard.desktop.drills;

import java.util.List;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Sides;

/** Which drill: a form, and beside it the course and the students. */
final class ChooseView implements View {
  private static final int LEAST = 640;
  private final ChoosePanel form;
  private final ChooseSide side;
  private final Sides sides;

  ChooseView(ChoosePanel form, ChooseSide side, Divider.Memory dividers) {
    this.form = form;
    this.side = side;
    this.sides =
        new Sides(
            LEAST, "A drill", form, "Course and students", side, "drills-choose", 0.6, dividers);
  }

  /** Brings the course to the front. */
  void showSide() {
    sides.showOther();
  }

  @Override
  public Name name() {
    return new Name("choose", "Choose", 'C');
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(form.first(), side.first());
  }
}
