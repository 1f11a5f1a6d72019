package limberboard.desktop.window;

import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.WindowConstants;
import limberboard.desktop.look.AppIcon;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Scrolling;
import limberboard.desktop.parts.Text;
import limberboard.library.file.WorkspaceFolders;

/**
 * Shown when the program is started where there is no workspace: says what is wrong, and offers to
 * open another or to make a new one. For the event thread only.
 */
public final class NoWorkspaceWindow {
  private static final Dimension USUAL = new Dimension(720, 480);
  private static final int GAP = 12;
  private final JFrame frame = new OnceFrame("No workspace · Limberboard");
  private final Path start;
  private final Consumer<WorkspaceFolders> open;

  /**
   * A window that is not yet shown.
   *
   * @param start the folder it was started in
   * @param why what is wrong there, as a sentence
   * @param recent workspaces opened lately
   * @param open opens a workspace; the window is gone by then
   * @param quit ends the program; the window is gone by then
   */
  public NoWorkspaceWindow(
      Path start, String why, List<Path> recent, Consumer<WorkspaceFolders> open, Runnable quit) {
    this.start = start;
    this.open = open;
    frame.setIconImages(AppIcon.images());
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    Runnable leave =
        () -> {
          frame.dispose();
          quit.run();
        };
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent e) {
            leave.run();
          }
        });
    Column column = new Column(GAP).padded(28, 32, 24, 32);
    column.add(Text.title("There is no workspace here"));
    column.add(Text.reading(why));
    column.add(
        Text.plain(
            "A workspace is a folder with the pages in “articles” and the boats in “boats”."));
    JButton another = Buttons.main("Open a workspace …", "open-workspace", this::ask);
    JButton fresh = Buttons.plain("Make a new one …", "new-workspace", this::askNew);
    JButton away = Buttons.plain("Quit", leave);
    column.add(Row.wrapping(GAP, another, fresh, away));
    List<Path> there = recent.stream().filter(Files::isDirectory).toList();
    if (!there.isEmpty()) {
      column.add(Text.heading("Opened lately"));
      there.forEach(path -> column.add(link(path)));
    }
    JScrollPane scroller = Scrolling.of(column);
    frame.setContentPane(scroller);
    Keys.everywhere(frame.getRootPane(), "control O", this::ask);
    Keys.everywhere(frame.getRootPane(), "control W", leave);
    Keys.everywhere(frame.getRootPane(), "control Q", leave);
    frame.getRootPane().setDefaultButton(another);
  }

  private Row link(Path path) {
    JButton button = Buttons.link(path.toString(), () -> take(new WorkspaceFolders(path)));
    return Row.wrapping(0, button);
  }

  /** Shows it. */
  public void show() {
    frame.setBounds(Screens.place(frame, Optional.empty(), USUAL));
    frame.setVisible(true);
  }

  /** The frame. */
  public JFrame frame() {
    return frame;
  }

  private void ask() {
    new WorkspaceQuestion(frame).ask(start).ifPresent(this::take);
  }

  private void askNew() {
    new WorkspaceQuestion(frame).askNew(start).ifPresent(this::take);
  }

  private void take(WorkspaceFolders folders) {
    frame.dispose();
    open.accept(folders);
  }
}
