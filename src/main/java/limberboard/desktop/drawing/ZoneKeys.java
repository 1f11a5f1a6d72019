package limberboard.desktop.drawing;

import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import limberboard.desktop.parts.Keys;

/** The keys of a view: arrows point at the next zone, Enter or Space chooses, Escape lets go. */
final class ZoneKeys {
  private final ZoneChoice choice;
  private final Supplier<Optional<ZoneMap>> zones;

  ZoneKeys(ZoneChoice choice, Supplier<Optional<ZoneMap>> zones) {
    this.choice = choice;
    this.zones = zones;
  }

  void bind(JComponent view) {
    Keys.focused(view, "LEFT", () -> move(-1, 0));
    Keys.focused(view, "RIGHT", () -> move(1, 0));
    Keys.focused(view, "UP", () -> move(0, -1));
    Keys.focused(view, "DOWN", () -> move(0, 1));
    Keys.focused(view, "ENTER", this::choose);
    Keys.focused(view, "SPACE", this::choose);
    Keys.focused(view, "ESCAPE", () -> choice.choose(Optional.empty()));
  }

  private void move(int dx, int dy) {
    Optional<ZoneMap> map = zones.get();
    Optional<String> from = choice.pointed().or(choice::chosen);
    Optional<String> to =
        from.isPresent()
            ? map.flatMap(found -> found.towards(from.get(), dx, dy)).or(() -> from)
            : map.flatMap(found -> found.ids().stream().findFirst());
    choice.point(to);
  }

  private void choose() {
    choice.pointed().ifPresent(zone -> choice.choose(Optional.of(zone)));
  }
}
