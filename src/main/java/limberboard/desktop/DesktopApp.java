package limberboard.desktop;

import java.awt.EventQueue;
import java.nio.file.Path;
import limberboard.desktop.base.KeptValues;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Recent;
import limberboard.desktop.base.Settings;
import limberboard.desktop.look.Theme;
import limberboard.desktop.parts.TextHabits;
import limberboard.desktop.window.NoWorkspaceWindow;
import limberboard.library.file.LastNet;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;

/** Opens the window. */
public final class DesktopApp {
  private DesktopApp() {}

  /**
   * Opens the window on a workspace. Returns at once; the program goes on until the window is
   * closed. Called once, from any thread but the event thread.
   *
   * @param folders the workspace
   * @param net catches what nobody expected
   */
  public static void open(WorkspaceFolders folders, LastNet net) {
    new DesktopStart(folders, net).start();
  }

  /**
   * Opens a window that says why there is no workspace here, and offers to open another or to make
   * a new one. Returns at once.
   *
   * @param folder the folder the program was started in
   * @param why what is wrong there, as a person reads it
   * @param net catches what nobody expected
   */
  public static void openWithout(Path folder, String why, LastNet net) {
    Workers workers = new Workers();
    OwnFiles own =
        new OwnFiles(
            UserFolders.here(), workers.library(), e -> net.line("Keeping the settings", e));
    EventQueue.invokeLater(
        () -> {
          KeptValues person = own.person();
          Settings settings = new Settings(new Memory(person));
          Theme.installFonts();
          Theme.apply(settings.theme(), settings.textPercent());
          TextHabits.install();
          new NoWorkspaceWindow(
                  folder,
                  why,
                  new Recent(person).all(),
                  other -> new DesktopStart(other, net).start(),
                  () -> System.exit(0))
              .show();
        });
  }
}
