package limberboard.desktop.upkeep.sheets;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.View;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.sheets.AppointmentsModel.Booked;
import limberboard.desktop.upkeep.sheets.AppointmentsModel.Line;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.state.UpkeepTools;

/** What is to be booked with others, call by call; Enter opens the page of the work. */
public final class AppointmentsAspect implements View {
  private final AppointmentsModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final CardList<Line> list = new CardList<>("What is to be booked", Line::card);
  private final Wrapped summary = Text.plain("");
  private final Wrapped rest = Text.quiet("");
  private final JButton later;
  private final SheetButtons buttons;

  /** The aspect. */
  public AppointmentsAspect(UpkeepTools tools) {
    model = new AppointmentsModel(tools.upkeep(), tools.place().background());
    buttons =
        new SheetButtons(
            "appointments", tools.place().papers(), () -> model.booked().map(HasSheet::sheet));
    later = Buttons.plain("", "appointments-later", model::turnLater);
    list.setName("appointments");
    list.framed().onChoose(line -> tools.place().navigator().openPage(line.page()));
    Column head = new Column(4).padded(0, 0, 0, 6);
    head.add(summary);
    head.add(rest);
    List<JButton> row = new ArrayList<>(buttons.all());
    row.add(0, later);
    Column foot = new Column(0).padded(6, 2, 2, 6);
    foot.add(Row.wrapping(8, row.toArray(JButton[]::new)));
    panel.setOpaque(false);
    panel.add(new StackedList(head, list, foot));
    When.showing(panel, () -> model.sheet().attend(panel.isShowing()));
    model.sheet().onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    List<Line> lines = model.booked().map(Booked::lines).orElse(List.of());
    if (!list.entries().equals(lines)) {
      list.show(lines);
    }
    if (list.getSelectedIndex() < 0 && !lines.isEmpty()) {
      list.setSelectedIndex(0);
    }
    summary.setText(model.booked().map(Booked::sum).orElse("Working out what is to be booked …"));
    summary.setVisible(!summary.getText().isEmpty());
    rest.setText(model.booked().map(Booked::rest).orElse(""));
    rest.setVisible(!rest.getText().isEmpty());
    int more = model.booked().map(Booked::later).orElse(0);
    later.setText(
        model.isLaterShown() ? "Hide what comes later" : "Show what comes later (" + more + ")");
    later.setVisible(model.isLaterShown() || more > 0);
    buttons.setEnabled(!lines.isEmpty());
    panel.revalidate();
    panel.repaint();
  }

  @Override
  public Name name() {
    return new Name("appointments", "To book", 'O');
  }

  @Override
  public Optional<Runnable> print() {
    return buttons.printing();
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    boolean nothing = model.booked().filter(booked -> booked.lines().isEmpty()).isPresent();
    return List.of(nothing ? (later.isVisible() ? later : panel) : list);
  }
}
