package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.print.sheet.ListWords;
import limberboard.upkeep.list.ListKind;

/**
 * The fitting-out and the laying-up list, in the order of the walk round the boat, with its lines
 * beside it to be ticked and written into the log together.
 */
public final class ListAspect implements View {
  private static final int LEAST_WIDTH = 860;
  private final ListModel model;
  private final JComboBox<ListKind> kind = new JComboBox<>(ListKind.values());
  private final SeasonBox season;
  private final JCheckBox everything = new JCheckBox("Also what is not due");
  private final SheetPanel panel;
  private final ListTicks ticks;
  private final Sides sides;

  /** The aspect. */
  public ListAspect(UpkeepTools tools, DueModel due, TickedWork wanted) {
    model = new ListModel(tools.upkeep(), tools.place().background());
    kind.setName("list-kind");
    kind.getAccessibleContext().setAccessibleName("Which list");
    kind.setRenderer(new ItemWords<ListKind>(ListWords::title));
    kind.addActionListener(e -> model.kind(kind.getItemAt(kind.getSelectedIndex())));
    season = new SeasonBox("list-season", model::season);
    everything.setName("list-everything");
    everything.setOpaque(false);
    everything.setMnemonic('A');
    everything.setToolTipText("All work that has an interval, with the day when it will be due");
    everything.addActionListener(e -> model.everything(everything.isSelected()));
    Keys.focused(everything, "ENTER", everything::doClick);
    panel = new SheetPanel("list", model.sheet(), tools, kind, season, everything);
    ticks = new ListTicks(model, due, wanted, tools.place().navigator()::openPage);
    sides =
        new Sides(
            LEAST_WIDTH,
            "The list",
            panel,
            "Tick off",
            ticks,
            "upkeep-list",
            0.62,
            tools.place().dividers());
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    season.show(model.seasons(), model.year());
    everything.setSelected(model.sheet().choice().everything());
  }

  @Override
  public Name name() {
    return new Name("list", "List", 'I');
  }

  @Override
  public Optional<Runnable> print() {
    return panel.printing();
  }

  @Override
  public Optional<Find> find() {
    return panel.finding();
  }

  @Override
  public JComponent component() {
    return sides;
  }

  @Override
  public List<JComponent> regions() {
    return List.of(kind, panel.region(), ticks.region());
  }
}
