package limberboard.desktop.tree;

import java.util.function.Consumer;
import limberboard.desktop.parts.Keys;

/** What the keys do to a tree. */
final class TreeKeys {
  private TreeKeys() {}

  static void bind(TreeCanvas view) {
    walk(view, "RIGHT", TreeWalk::right);
    walk(view, "LEFT", TreeWalk::left);
    walk(view, "DOWN", walk -> walk.sideways(1));
    walk(view, "UP", walk -> walk.sideways(-1));
    walk(view, "HOME", TreeWalk::toRoot);
    walk(view, "H", TreeWalk::toHere);
    walk(view, "ENTER", walk -> walk.toggle(walk.selected()));
    walk(view, "SPACE", walk -> walk.toggle(walk.selected()));
    for (String plus : new String[] {"PLUS", "EQUALS", "ADD"}) {
      Keys.focused(view, "control " + plus, () -> view.sight().zoom(view.sight().zoom().by(1)));
    }
    Keys.focused(view, "control shift EQUALS", () -> view.sight().zoom(view.sight().zoom().by(1)));
    for (String minus : new String[] {"MINUS", "SUBTRACT"}) {
      Keys.focused(view, "control " + minus, () -> view.sight().zoom(view.sight().zoom().by(-1)));
    }
    for (String zero : new String[] {"0", "NUMPAD0"}) {
      Keys.focused(view, "control " + zero, () -> view.sight().zoom(Zoom.USUAL));
    }
  }

  private static void walk(TreeCanvas view, String key, Consumer<TreeWalk> action) {
    Keys.focused(
        view,
        key,
        () -> {
          view.walk().ifPresent(action);
          view.sight().reveal();
        });
  }
}
