package limberboard.desktop.boats;

import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import limberboard.desktop.base.Latest;
import limberboard.desktop.drawing.BoatView;
import limberboard.desktop.drawing.ZoneChoice;
import limberboard.desktop.drawing.ZoneMap;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.read.PagePictures;
import limberboard.desktop.upkeep.log.LogTable;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/** Beside the form: the drawing of the model, and the boat's log. */
final class BesidePanel extends JPanel {
  private final transient BoatFormModel model;
  private final transient PagePictures pictures;
  private final transient Latest latest;
  private final BoatView view;
  private final LogTable table = new LogTable("log", 148, 200, 64, 90, 90);
  private final Wrapped words = Text.quiet("");
  private transient Optional<Drawn> drawn = Optional.empty();

  BesidePanel(BoatFormModel model, PagePictures pictures, Latest latest, Divider.Memory dividers) {
    super(new BorderLayout());
    this.model = model;
    this.pictures = pictures;
    this.latest = latest;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 6, 10, 14));
    view = new BoatView("Profile", new ZoneChoice(), this::zoneTitle);
    view.setName("boat-profile");
    add(Divider.below("boats-log", view, logPanel(), 0.55, dividers));
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent logPanel() {
    Column head = new Column(2);
    head.add(Text.heading("Log"));
    head.add(words);
    JPanel panel = new JPanel(new BorderLayout(0, 6));
    panel.setOpaque(false);
    JScrollPane scroller = new JScrollPane(table);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    panel.add(head, BorderLayout.NORTH);
    panel.add(scroller, BorderLayout.CENTER);
    return panel;
  }

  JComponent region() {
    return table;
  }

  private String zoneTitle(String id) {
    return model
        .form()
        .model()
        .flatMap(page -> page.details().zone(id))
        .map(Model.Zone::title)
        .orElse(id);
  }

  /** What is drawn: the model's page, and whether it is dark. */
  private record Drawn(Page<Model> page, boolean dark) {}

  private void refresh() {
    table.show(model.log());
    boolean empty = table.getRowCount() == 0;
    words.setText(
        empty
            ? "Nothing in it yet. It is kept in the file log.csv in the boat's folder."
            : "What has been done, the newest first.");
    table.getParent().getParent().setVisible(!empty);
    view.setVisible(model.form().model().isPresent());
    model.form().model().ifPresent(this::draw);
  }

  private void draw(Page<Model> page) {
    boolean dark = Theme.isDark();
    Optional<Drawn> wanted = Optional.of(new Drawn(page, dark));
    if (wanted.equals(drawn)) {
      return;
    }
    drawn = wanted;
    latest.run(
        "Drawing the boat",
        () -> pictures.drawing(page.path(), page.details().drawing().profile(), dark),
        found -> view.show(found, ZoneMap.profile(page.details())));
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (model != null) {
      model.form().model().ifPresent(this::draw);
    }
  }
}
