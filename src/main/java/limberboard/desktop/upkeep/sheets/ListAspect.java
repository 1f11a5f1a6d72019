package limberboard.desktop.upkeep.sheets;

import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.ItemWords;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.upkeep.due.DueModel;
import limberboard.desktop.upkeep.state.TickedWork;
import limberboard.desktop.upkeep.state.UpkeepTools;
import limberboard.print.sheet.ListWords;
import limberboard.upkeep.list.ListKind;

/**
 * The fitting-out and the laying-up list, in the order of the walk round the boat, with its lines
 * beside it to be ticked and written into the log together.
 */
public final class ListAspect {
  private static final int LEAST_WIDTH = 860;
  private final ListModel model;
  private final JComboBox<ListKind> kind = new JComboBox<>(ListKind.values());
  private final SeasonBox season;
  private final JCheckBox everything = new JCheckBox("Also what is not due");
  private final View view;

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
    SheetPanel panel = new SheetPanel("list", model.sheet(), tools, kind, season, everything);
    ListTicks ticks = new ListTicks(model, due, wanted, tools.place().navigator()::openPage);
    view =
        new SheetView(
            tools,
            new View.Name("list", "List", 'I'),
            "The list",
            panel,
            new SheetView.Beside("Tick off", ticks, ticks::region, LEAST_WIDTH, 0.38),
            Optional.of(kind));
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    season.show(model.seasons(), model.year());
    everything.setSelected(model.sheet().choice().everything());
  }

  /** What is put into the window. */
  public View view() {
    return view;
  }
}
