package limberboard.desktop.drills;

import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import limberboard.boat.Boat;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.drill.Drill;

/** Before the first step: the owner's letter, the boat, and every caution that can come up. */
final class LetterSheet extends Docked {
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final JButton begin;
  private Wrapped title = Text.title("");

  /**
   * A sheet.
   *
   * @param begin goes on to the first step
   */
  LetterSheet(Runnable begin) {
    super(10);
    this.begin = Buttons.main("To the first step", "drill-letter-read", begin);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, this.begin));
    dock(sheet, foot);
    Keys.within(this, "control ENTER", this.begin::doClick);
  }

  void show(Drill drill) {
    Boat boat = drill.fault().fitting().boat();
    sheet.removeAll();
    title = Text.title("The owner writes");
    new FocusedText(title, sheet).named("drill-letter");
    Keys.focused(title, "DOWN", begin::requestFocusInWindow);
    sheet.add(title);
    drill.letter().forEach(line -> sheet.add(Text.reading(line)));
    sheet.add(Text.caption("The boat"));
    sheet.add(Text.plain(which(boat)));
    List<WorkCaution> cautions = drill.cautions();
    if (!cautions.isEmpty()) {
      sheet.add(Text.heading("What can come up, and what then matters"));
      cautions.stream()
          .filter(WorkCaution::emergency)
          .forEach(caution -> sheet.add(CautionBox.whole(caution)));
      List<WorkCaution> others = cautions.stream().filter(caution -> !caution.emergency()).toList();
      if (!others.isEmpty()) {
        sheet.add(CautionBox.brief(others));
      }
      sheet.add(
          Text.quiet(
              "Each stands again before the work it is for. Taking its step then is part of the"
                  + " drill."));
    }
    revalidate();
    repaint();
  }

  /** Model, year, use, water, and what is fitted. */
  static String facts(Boat boat) {
    String fitted =
        boat.model().details().equipment().stream()
            .map(
                equipment ->
                    equipment.choices().stream()
                        .filter(choice -> choice.id().equals(boat.equipment().get(equipment.id())))
                        .map(choice -> equipment.title() + ": " + choice.title())
                        .findFirst()
                        .orElse(""))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining("; "));
    return which(boat) + (fitted.isEmpty() ? "" : "\n" + fitted + ".");
  }

  private static String which(Boat boat) {
    return boat.name()
        + ", "
        + boat.particulars()
        + ", "
        + boat.water().spoken()
        + " water, "
        + boat.use().spoken()
        + ".";
  }

  /** The heading takes the focus, so that no key goes on unread. */
  Wrapped first() {
    return title;
  }
}
