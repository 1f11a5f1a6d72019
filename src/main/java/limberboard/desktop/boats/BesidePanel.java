package limberboard.desktop.boats;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
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
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/** Beside the form: the drawing of the model, and the boat's log. */
final class BesidePanel extends JPanel {
  private final transient BoatFormModel model;
  private final transient PagePictures pictures;
  private final transient Latest latest;
  private final BoatView view;
  private final LogTable log;
  private final JTable table;
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
    log = new LogTable(model);
    table = new WordyTable(log);
    add(Divider.below("boats-log", view, logPanel(), 0.55, dividers));
    model.onChange(this::refresh);
    refresh();
  }

  private JComponent logPanel() {
    table.setName("log");
    table.setAutoResizeMode(JTable.AUTO_RESIZE_LAST_COLUMN);
    table.getAccessibleContext().setAccessibleName("Log");
    table.setFillsViewportHeight(true);
    ((DefaultTableCellRenderer) table.getTableHeader().getDefaultRenderer())
        .setHorizontalAlignment(SwingConstants.LEADING);
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

  private void setWidths() {
    int counted = log.hasCounts() ? 90 : 0;
    int[] widths = {148, 200, 64, counted, 90};
    for (int i = 0; i < widths.length; i++) {
      TableColumn column = table.getColumnModel().getColumn(i);
      column.setMinWidth(UIScale.scale(Math.min(widths[i], i == 0 ? widths[0] : 64)));
      column.setMaxWidth(widths[i] == 0 ? 0 : Integer.MAX_VALUE);
      column.setPreferredWidth(UIScale.scale(widths[i]));
    }
  }

  JComponent region() {
    return table;
  }

  private String zoneTitle(String id) {
    return model.model().flatMap(page -> page.details().zone(id)).map(Model.Zone::title).orElse(id);
  }

  /** What is drawn: the model's page, and whether it is dark. */
  private record Drawn(Page<Model> page, boolean dark) {}

  private void refresh() {
    model.original().ifPresentOrElse(log::show, log::clear);
    setWidths();
    boolean empty = log.getRowCount() == 0;
    words.setText(
        empty
            ? "Nothing in it yet. It is kept in the file log.csv in the boat's folder."
            : "What has been done, the newest first.");
    table.getParent().getParent().setVisible(!empty);
    view.setVisible(model.model().isPresent());
    model.model().ifPresent(this::draw);
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

  /** A table whose cells tell all they hold when pointed at. */
  private static final class WordyTable extends JTable {
    WordyTable(LogTable log) {
      super(log);
    }

    /** Columns keep their widths where there is too little room for them, and scroll sideways. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
      return getParent() == null || getPreferredSize().width <= getParent().getWidth();
    }

    @Override
    public String getToolTipText(MouseEvent e) {
      int row = rowAtPoint(e.getPoint());
      int column = columnAtPoint(e.getPoint());
      String words = row < 0 || column < 0 ? "" : String.valueOf(getValueAt(row, column));
      return words.isEmpty() ? null : words;
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (model != null) {
      setWidths();
      Optional<Page<Model>> page = model.model();
      page.ifPresent(this::draw);
    }
  }
}
