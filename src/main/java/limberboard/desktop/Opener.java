package limberboard.desktop;

import java.nio.file.Path;
import java.util.List;

/** Opens other workspaces in place of the one that is open. For the event thread only. */
interface Opener {
  /** Opens none, as in pictures and trials. */
  Opener NONE =
      new Opener() {
        @Override
        public void ask() {
          // there is nothing else to open
        }

        @Override
        public void open(Path root) {
          // there is nothing else to open
        }

        @Override
        public List<Path> recent() {
          return List.of();
        }
      };

  /** Asks for a workspace, and opens it. */
  void ask();

  /** Opens a workspace. */
  void open(Path root);

  /** The workspaces opened lately, without the one that is open. */
  List<Path> recent();
}
