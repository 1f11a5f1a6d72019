package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.EventQueue;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;
import limberboard.print.xhtml.Xhtml;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way to the cautions in full and back; needs no display. */
class CautionJumpsTest {
  private static final int WIDTH = 700;
  private static final int HEIGHT = 200;

  @TempDir Path folder;
  private final List<String> elsewhere = new ArrayList<>();
  private ReadingPane pane;

  private static <T> T onEventThread(Callable<T> step) throws Exception {
    FutureTask<T> task = new FutureTask<>(step);
    EventQueue.invokeLater(task);
    return task.get();
  }

  @BeforeEach
  void show() throws Exception {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Library library = SmallWorkspace.read(folders).library();
    Rendered page =
        new PageRenderer(Pictures.in(folders))
            .screen(
                new PageRenderer.Order(
                    library, library.page("mend-gas-line").orElseThrow(), Optional.empty(), false),
                false,
                ScreenStyle.now(100));
    pane = onEventThread(() -> new ReadingPane(Steps.atOnce(), elsewhere::add));
    for (int turn = 0; turn < 3; turn++) {
      boolean first = turn == 0;
      onEventThread(
          () -> {
            if (first) {
              pane.addNotify();
              pane.show(page, OptionalInt.of(0));
            }
            pane.setSize(WIDTH, HEIGHT);
            layOut(pane);
            return true;
          });
    }
  }

  private static void layOut(Container container) {
    container.doLayout();
    for (java.awt.Component child : container.getComponents()) {
      if (child instanceof Container nested) {
        layOut(nested);
      }
    }
  }

  private PageView view() {
    return (PageView) pane.region();
  }

  private Link link(String address) {
    return view().text().links().stream()
        .filter(link -> link.address().startsWith(address))
        .findFirst()
        .orElseThrow();
  }

  private boolean isSeen(Link link) {
    return view().text().boxes(LaidOutText.part(link)).stream()
        .anyMatch(view().getVisibleRect()::intersects);
  }

  private void press(String key) {
    Object bound =
        pane.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
            .get(KeyStroke.getKeyStroke(key));
    pane.getActionMap().get(bound).actionPerformed(new ActionEvent(pane, 1, key));
  }

  @Test
  void aNameLeadsToItsWholeTextAndBackToWhereOneWasReading() throws Exception {
    onEventThread(
        () -> {
          Link name = link(Xhtml.FULL);
          Link whole = link(Xhtml.SHORT);
          assertThat(isSeen(whole)).isFalse();
          view().follow(name);
          assertThat(isSeen(whole)).isTrue();
          assertThat(pane.position()).isPositive();
          view().follow(whole);
          assertThat(pane.position()).isZero();
          assertThat(isSeen(name)).isTrue();
          return true;
        });
    assertThat(elsewhere).isEmpty();
  }

  @Test
  void oneKeyLeadsThereAndBack() throws Exception {
    onEventThread(
        () -> {
          press("F7");
          assertThat(isSeen(link(Xhtml.SHORT))).isTrue();
          press("F7");
          assertThat(pane.position()).isZero();
          return true;
        });
  }

  @Test
  void fromTheWholeTextOneComesToTheTwoLinesAlsoWithoutHavingLeftThem() throws Exception {
    onEventThread(
        () -> {
          view().reveal(LaidOutText.part(link(Xhtml.SHORT)));
          view().follow(link(Xhtml.SHORT));
          assertThat(isSeen(link(Xhtml.FULL))).isTrue();
          return true;
        });
  }
}
