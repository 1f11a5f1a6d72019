package limberboard.desktop.trace;

import com.formdev.flatlaf.util.UIScale;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.drawing.BoatView;
import limberboard.desktop.drawing.ZoneChoice;
import limberboard.desktop.drawing.ZoneMap;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.read.PagePictures;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Drawing;
import limberboard.library.page.Page;
import limberboard.print.picture.SvgPicture;
import net.miginfocom.swing.MigLayout;

/**
 * Where is it, and what do you notice? The boat with its zones, and the symptoms to choose from.
 */
final class BeforePanel extends JPanel {
  private static final int LEAST_WIDTH = 780;
  private static final String WIDE_COLUMNS = "[grow,fill]14[180lp::240lp,fill][340lp::460lp,fill]";
  private static final String NARROW_COLUMNS = "[grow 46,fill,0:0:]14[grow 54,fill,0:0:]";
  private final transient TraceModel model;
  private final transient PagePictures drawings;
  private final transient Latest latest;
  private final transient ZoneChoice zones = new ZoneChoice();
  private final BoatView profile = new BoatView("Profile", zones, id -> model().where().title(id));
  private final BoatView deck = new BoatView("Deck plan", zones, id -> model().where().title(id));
  private final ZoneList zoneList;
  private final SymptomList symptoms;
  private final JComponent views;
  private transient Optional<Shown> shown = Optional.empty();

  /** What the views show: boat, model page and whether it is dark. */
  private record Shown(String boat, Page<Model> model, boolean dark) {}

  /** Both drawings of a model. */
  private record Loaded(Optional<SvgPicture> profile, Optional<SvgPicture> deck) {}

  BeforePanel(TraceModel model, PagePictures drawings, Background background) {
    super(new MigLayout());
    this.model = model;
    this.drawings = drawings;
    this.latest = new Latest(background);
    this.zoneList = new ZoneList(model, zones);
    this.symptoms = new SymptomList(model);
    this.views = views();
    profile.setName("profile");
    deck.setName("deck");
    add(views);
    add(zoneList);
    add(symptoms);
    arrange();
    When.resized(this, this::arrange);
    zones.onChange(() -> model.where().choose(zones.chosen()));
    model.onChange(this::refresh);
    refresh();
  }

  private TraceModel model() {
    return model;
  }

  /** Three columns while there is room; otherwise the two lists stand one below the other. */
  private void arrange() {
    boolean narrow = getWidth() > 0 && getWidth() < UIScale.scale(LEAST_WIDTH);
    MigLayout layout = (MigLayout) getLayout();
    layout.setLayoutConstraints("insets 14 18 10 18, fill, gap 18");
    layout.setColumnConstraints(narrow ? NARROW_COLUMNS : WIDE_COLUMNS);
    layout.setRowConstraints(narrow ? "[grow 45,fill,0:0:][grow 55,fill,0:0:]" : "[grow,fill]");
    layout.setComponentConstraints(views, narrow ? "cell 0 0 1 2, grow" : "cell 0 0, grow");
    layout.setComponentConstraints(zoneList, "cell 1 0, grow, wmin 0, hmin 0");
    layout.setComponentConstraints(
        symptoms, (narrow ? "cell 1 1" : "cell 2 0") + ", grow, wmin 0, hmin 0");
    revalidate();
  }

  private JComponent views() {
    JPanel panel =
        new JPanel(
            new MigLayout(
                "insets 0, fill, flowy, gapy 4",
                "[grow,fill]",
                "[]10[0:0:,grow 64,fill][0:0:,grow 36,fill]"));
    panel.add(Text.title("Where is it?"), "wmin 0");
    panel.add(profile, "grow");
    panel.add(deck, "grow");
    return panel;
  }

  List<JComponent> regions() {
    return List.of(profile, deck, zoneList, symptoms);
  }

  /** Brings everything up to date, and loads the drawing when it is another one. */
  private void refresh() {
    zones.choose(model.where().zone());
    Optional<Fitting> fitting = model.fitting();
    if (fitting.isEmpty()) {
      return;
    }
    Boat boat = fitting.get().boat();
    Shown wanted = new Shown(boat.id(), boat.model(), Theme.isDark());
    if (!Optional.of(wanted).equals(shown)) {
      shown = Optional.of(wanted);
      load(boat, wanted.dark());
    }
  }

  private void load(Boat boat, boolean dark) {
    Drawing names = boat.model().details().drawing();
    String page = boat.model().path();
    latest.run(
        "Drawing the boat",
        () ->
            new Loaded(
                drawings.drawing(page, names.profile(), dark),
                drawings.drawing(page, names.deck(), dark)),
        loaded -> {
          profile.show(loaded.profile(), ZoneMap.profile(boat.model().details()));
          deck.show(loaded.deck(), ZoneMap.deck(boat.model().details()));
        });
  }

  @Override
  public void updateUI() {
    super.updateUI();
    if (zones != null) {
      refresh();
    }
  }
}
