package limberboard.desktop.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ObservedTest {
  private static final class Lamp extends Observed {
    void light() {
      tell();
    }
  }

  private final Lamp lamp = new Lamp();
  private final List<String> heard = new ArrayList<>();

  @Test
  void whoListensIsToldInTheOrderTheyCame() {
    lamp.onChange(() -> heard.add("first"));
    lamp.onChange(() -> heard.add("second"));
    lamp.light();
    lamp.light();
    assertEquals(List.of("first", "second", "first", "second"), heard);
  }

  @Test
  void whoComesWhileOthersAreToldIsToldNextTime() {
    lamp.onChange(
        () -> {
          heard.add("first");
          if (heard.size() == 1) {
            lamp.onChange(() -> heard.add("late"));
          }
        });
    lamp.light();
    assertEquals(List.of("first"), heard);
    lamp.light();
    assertEquals(List.of("first", "first", "late"), heard);
  }
}
