package limberboard.desktop;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.JRootPane;

/** Shows a window in a state and paints its content. */
final class Painter {
  private static final int TURNS = 4;
  private static final long TICK = 20;
  private final WindowAssembly desk;
  private final Dimension size;

  /** Shows the window; on the event thread. */
  Painter(WindowAssembly desk, Dimension size) {
    this.desk = desk;
    this.size = size;
    JFrame frame = desk.window().frame();
    frame.getRootPane().setPreferredSize(size);
    frame.pack();
    frame.setVisible(true);
    desk.loader().load();
    desk.session().choose(Optional.of(Scene.boat()));
  }

  /** The window. */
  WindowAssembly desk() {
    return desk;
  }

  /** Brings the window into a state; on the event thread. */
  void set(Scene scene) {
    scene.set(desk);
  }

  /**
   * The picture, once nothing is being done any more; not on the event thread. Laying out goes on
   * while painting, so it is painted a few times and the last one counts.
   *
   * @throws IOException when it cannot be made
   */
  byte[] png() throws IOException {
    untilQuiet();
    BufferedImage image = OnEventThread.get(this::paint);
    for (int turn = 1; turn < TURNS; turn++) {
      image = OnEventThread.get(this::paint);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  private void untilQuiet() throws IOException {
    try {
      while (!OnEventThread.get(desk::isQuiet)) {
        Thread.sleep(TICK);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("stopped while waiting for the window", e);
    }
  }

  private BufferedImage paint() {
    JRootPane root = desk.window().frame().getRootPane();
    root.validate();
    BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    root.paint(g);
    g.dispose();
    return image;
  }

  /** Takes the window away; on the event thread. */
  void close() {
    desk.window().frame().dispose();
  }
}
