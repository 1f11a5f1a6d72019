package limberboard.desktop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Model;
import limberboard.library.page.Outline;
import limberboard.library.value.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZoneMapTest {
  private static Model.Zone zone(String id, String outline) {
    return new Model.Zone(id, id, Optional.of(Outline.parse(outline)), Optional.empty());
  }

  private final ZoneMap zones =
      ZoneMap.profile(
          new Model(
              Range.parse("2010/.."),
              null,
              new Model.Drawing("p.svg", "d.svg"),
              List.of(
                  zone("hull", "0,100 300,100 300,200 0,200"),
                  zone("locker", "200,110 290,110 290,190 200,190"),
                  zone("mast", "140,0 160,0 160,90 140,90"),
                  zone("horseshoe", "0,220 300,220 300,300 200,300 200,240 100,240 100,300 0,300")),
              List.of(),
              null,
              null,
              null,
              null,
              null,
              null));

  @ParameterizedTest
  @CsvSource({
    "50,150,hull",
    "250,150,locker",
    "150,50,mast",
    "150,270,",
    "500,500,",
    "10,290,horseshoe"
  })
  void theSmallestZoneUnderThePointCounts(double x, double y, String expected) {
    assertThat(zones.at(x, y)).isEqualTo(Optional.ofNullable(expected));
  }

  @Test
  void theMiddleOfAZoneLiesInside() {
    for (String id : zones.ids()) {
      Point2D middle = zones.middle(id).orElseThrow();
      assertThat(zones.outline(id).orElseThrow().contains(middle)).as(id).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "mast,0,1,hull",
    "hull,0,-1,mast",
    "hull,1,0,locker",
    "locker,-1,0,hull",
    "mast,0,-1,"
  })
  void arrowKeysGoToTheNearestZoneInTheirDirection(String from, int dx, int dy, String to) {
    assertThat(zones.towards(from, dx, dy)).isEqualTo(Optional.ofNullable(to));
  }

  @Test
  void aZoneThatThisViewDoesNotShowIsNotOnIt() {
    assertThat(zones.outline("keel")).isEmpty();
    assertThat(zones.middle("keel")).isEmpty();
    assertThat(zones.towards("keel", 1, 0)).contains("hull");
  }

  @Test
  void pointsGoFromTheDrawingToTheScreenAndBack() {
    DrawingFrame sheet = DrawingFrame.fit(new Rectangle2D.Double(0, 0, 300, 300), 1200, 600);
    Point2D onScreen = sheet.toComponent().transform(new Point2D.Double(150, 75), null);
    assertThat(onScreen).isEqualTo(new Point2D.Double(600, 150));
    assertThat(sheet.toDrawing(onScreen)).isEqualTo(new Point2D.Double(150, 75));
  }
}
