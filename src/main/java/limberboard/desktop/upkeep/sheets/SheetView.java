package limberboard.desktop.upkeep.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.upkeep.state.UpkeepTools;

/** A sheet, with what is ticked or chosen for it beside it: the frame of every aspect here. */
final class SheetView implements View {
  private final Name name;
  private final SheetPanel sheet;
  private final Sides sides;
  private final Beside beside;
  private final Optional<JComponent> first;

  /**
   * The frame.
   *
   * @param title what the sheet is called where there is room for one of the two only
   * @param first where the keyboard begins; empty for the sheet
   */
  SheetView(
      UpkeepTools tools,
      Name name,
      String title,
      SheetPanel sheet,
      Beside beside,
      Optional<JComponent> first) {
    this.name = name;
    this.sheet = sheet;
    this.beside = beside;
    this.first = first;
    sides =
        new Sides(
            beside.leastWidth(),
            title,
            sheet,
            beside.title(),
            beside.component(),
            "upkeep-" + name.id(),
            1 - beside.share(),
            tools.place().dividers());
  }

  /**
   * What stands beside the sheet.
   *
   * @param title what it is called where there is room for one of the two only
   * @param region what takes the focus in it
   * @param leastWidth the width from which on there is room for both, in pixels of the usual text
   * @param share of the width at first, 0 to 1
   */
  record Beside(
      String title,
      JComponent component,
      Supplier<JComponent> region,
      int leastWidth,
      double share) {}

  @Override
  public Name name() {
    return name;
  }

  @Override
  public Optional<Runnable> print() {
    return sheet.printing();
  }

  @Override
  public Optional<Find> find() {
    return sheet.finding();
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(first.stream().toList());
    regions.add(sheet.region());
    regions.add(beside.region().get());
    return regions;
  }
}
