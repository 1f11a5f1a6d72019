package limberboard.desktop.window;

import java.nio.file.Path;
import java.util.List;

/** What the window's menu and keys do outside the window itself. For the event thread only. */
public interface Actions {
  /** Goes where a new boat is entered. */
  void newBoat();

  /** Goes where the log of the chosen boat, which was bought, is begun. */
  void beginLog();

  /** Reads the workspace's files again. */
  void readAgain();

  /** Asks for another workspace, and opens it in place of this one. */
  void openWorkspace();

  /** Opens a workspace in place of this one. */
  void openWorkspace(Path root);

  /** The workspaces opened lately, the last one first, without this one. */
  List<Path> recent();

  /** Goes to a part of the place for the whole workspace, by its name. */
  void workspace(String part);

  /** Asks for a quick note, about what is on the screen. */
  void quickNote();

  /** Opens the user guide at the part about a place. */
  void help(String place);

  /** Tells which program this is, and where its files are. */
  void about();
}
