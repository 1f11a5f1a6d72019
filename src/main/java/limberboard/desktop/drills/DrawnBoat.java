package limberboard.desktop.drills;

import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.drawing.BoatView;
import limberboard.desktop.drawing.ZoneChoice;
import limberboard.desktop.drawing.ZoneMap;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.Column;
import limberboard.desktop.read.PagePictures;
import limberboard.library.page.Model;

/** The boat's profile, with the place marked where the owner notices it. */
final class DrawnBoat extends Column {
  private static final int HIGH = 190;
  private final transient PagePictures drawings;
  private final transient Latest latest;
  private final transient ZoneChoice zones = new ZoneChoice();
  private final BoatView profile;
  private transient Optional<Shown> shown = Optional.empty();
  private transient Optional<Boat> boat = Optional.empty();

  private record Shown(String boat, boolean dark) {}

  DrawnBoat(PagePictures drawings, Background background) {
    super(0);
    this.drawings = drawings;
    this.latest = new Latest(background);
    this.profile = new BoatView("Profile", zones, this::title);
    profile.setName("drill-boat-drawing");
    profile.setFocusable(false);
    profile.setPreferredSize(new Dimension(300, HIGH));
    add(profile);
  }

  private String title(String zone) {
    return boat.flatMap(each -> each.model().details().zone(zone))
        .map(Model.Zone::title)
        .orElse(zone);
  }

  void show(Boat other, List<String> noticed) {
    boat = Optional.of(other);
    zones.choose(noticed.stream().findFirst());
    Optional<Shown> wanted = Optional.of(new Shown(other.id(), Theme.isDark()));
    if (!wanted.equals(shown)) {
      shown = wanted;
      boolean dark = Theme.isDark();
      String page = other.model().path();
      String name = other.model().details().drawing().profile();
      latest.run(
          "Drawing the boat",
          () -> drawings.drawing(page, name, dark),
          found -> profile.show(found, ZoneMap.profile(other.model().details())));
    }
  }
}
