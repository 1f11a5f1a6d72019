package limberboard.print.markdown;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** Paths within the workspace, as text. */
final class WorkspacePath {
  private WorkspacePath() {}

  /** The path without {@code .} and {@code ..}; empty when it leads out of the workspace. */
  static Optional<String> normalised(String path) {
    Deque<String> names = new ArrayDeque<>();
    for (String name : path.split("/", -1)) {
      if (name.equals("..")) {
        if (names.pollLast() == null) {
          return Optional.empty();
        }
      } else if (!name.isEmpty() && !name.equals(".")) {
        names.addLast(name);
      }
    }
    return Optional.of(String.join("/", names));
  }
}
