package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages as they are painted; needs no display. */
class ReadingPaneTest {
  @TempDir Path folder;

  private static <T> T onEventThread(Callable<T> step) throws Exception {
    FutureTask<T> task = new FutureTask<>(step);
    EventQueue.invokeLater(task);
    return task.get();
  }

  private Rendered render(String page, int percent) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Workspace workspace = SmallWorkspace.read(folders);
    Fitting knot = new Fitting(workspace.boat("knot").orElseThrow(), SmallWorkspace.TODAY);
    return new PageRenderer(Pictures.in(folders))
        .screen(
            new PageRenderer.Order(
                workspace.library(),
                workspace.library().page(page).orElseThrow(),
                Optional.of(knot),
                false),
            false,
            ScreenStyle.now(percent));
  }

  private static BufferedImage painted(Rendered rendered, int scale) throws Exception {
    ReadingPane pane = onEventThread(() -> new ReadingPane(Steps.atOnce(), address -> {}));
    BufferedImage[] last = new BufferedImage[1];
    for (int turn = 0; turn < 3; turn++) {
      boolean first = turn == 0;
      last[0] =
          onEventThread(
              () -> {
                if (first) {
                  pane.addNotify();
                  pane.show(rendered, OptionalInt.of(0));
                }
                pane.setSize(700, 2600);
                layOut(pane);
                BufferedImage image =
                    new BufferedImage(700 * scale, 2600 * scale, BufferedImage.TYPE_INT_RGB);
                Graphics2D g = image.createGraphics();
                g.scale(scale, scale);
                pane.paint(g);
                g.dispose();
                return image;
              });
    }
    return last[0];
  }

  private static void layOut(java.awt.Container container) {
    container.doLayout();
    for (java.awt.Component child : container.getComponents()) {
      if (child instanceof java.awt.Container nested) {
        layOut(nested);
      }
    }
  }

  /** How many rows of pixels hold a run of ink as long as the line of the drawing. */
  private static long rowsWithLine(BufferedImage image, int length) {
    long rows = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        boolean ink = (image.getRGB(x, y) & 0xffffff) == 0x16324f;
        if (!ink && Math.abs(run - length) <= 2) {
          rows++;
        }
        run = ink ? run + 1 : 0;
      }
    }
    return rows;
  }

  @Test
  void picturesOfAPageArePainted() throws Exception {
    onEventThread(
        () -> {
          Theme.installFonts();
          Theme.apply(ThemeChoice.LIGHT, 100);
          return true;
        });
    BufferedImage usual = painted(render("replace-gasket", 100), 1);
    assertThat(rowsWithLine(usual, 280)).as("the drawing's line is 12 thick").isEqualTo(12);
  }

  @Test
  void picturesAreSharpOnAFinerScreen() throws Exception {
    onEventThread(
        () -> {
          Theme.installFonts();
          Theme.apply(ThemeChoice.LIGHT, 100);
          return true;
        });
    BufferedImage fine = painted(render("replace-gasket", 100), 2);
    assertThat(rowsWithLine(fine, 560)).as("every one of twice as many rows").isEqualTo(24);
  }
}
