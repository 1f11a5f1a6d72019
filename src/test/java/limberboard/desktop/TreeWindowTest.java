package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.Aspect;
import limberboard.desktop.trace.Stage;
import limberboard.desktop.tree.TreeCanvas;
import limberboard.desktop.tree.TreeWalk;
import limberboard.trace.Trace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The tree and the reasons through real mouse and keyboard events. Needs a display; a virtual one
 * will do.
 */
class TreeWindowTest extends RealWindow {
  @BeforeEach
  void beginTracing() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.act(() -> desk().navigator().trace("wet-locker"));
    window.until("cautions", () -> desk().trace().stage() == Stage.CAUTIONS);
    window.act(() -> desk().trace().cautionsRead());
    window.until("a check", () -> desk().trace().stage() == Stage.CHECK);
  }

  private TreeCanvas lookAtTree() {
    window.press(KeyEvent.VK_W, KeyEvent.VK_ALT);
    window.until("the tree has grown", () -> desk().aspects().tree().walk().isPresent());
    TreeCanvas view = window.find("tree", TreeCanvas.class);
    window.focus("tree");
    return view;
  }

  private TreeWalk walk() {
    return window.ask(() -> desk().aspects().tree().walk().orElseThrow());
  }

  private int selected() {
    return window.ask(() -> walk().selected().number());
  }

  private String spoken(TreeCanvas view) {
    return window.ask(() -> view.getAccessibleContext().getAccessibleDescription());
  }

  private List<String> texts() {
    return window.showing().stream()
        .filter(Wrapped.class::isInstance)
        .map(text -> window.ask(((Wrapped) text)::getText))
        .toList();
  }

  @Test
  void aKeyGoesToTheTreeAndAnotherBackToTheQuestion() {
    String question = window.ask(() -> desk().trace().step().orElseThrow().text());
    TreeCanvas view = lookAtTree();
    assertThat(view.isShowing()).isTrue();
    assertThat(window.ask(() -> desk().aspects().now())).isEqualTo(Aspect.TREE);
    assertThat(spoken(view)).startsWith("You are here. Check: " + question);
    assertThat(texts()).anyMatch(text -> text.startsWith("From the beginning: "));
    window.press(KeyEvent.VK_N, KeyEvent.VK_ALT);
    assertThat(view.isShowing()).isFalse();
    assertThat(window.find("cant-tell", AbstractButton.class).isShowing()).isTrue();
    window.click("look-tree");
    window.until("the tree is there again", view::isShowing);
  }

  @Test
  void theKeysWalkThroughTheTreeAndFoldIt() {
    TreeCanvas view = lookAtTree();
    window.press(KeyEvent.VK_RIGHT);
    int child = selected();
    assertThat(child).isGreaterThan(1);
    assertThat(window.ask(() -> walk().selected().at().trail())).hasSize(1);
    window.press(KeyEvent.VK_DOWN);
    assertThat(selected()).isGreaterThan(child);
    assertThat(spoken(view)).doesNotContain("You are here");
    window.press(KeyEvent.VK_UP);
    assertThat(selected()).isEqualTo(child);
    window.press(KeyEvent.VK_HOME);
    assertThat(selected()).isEqualTo(1);
    assertThat(spoken(view)).contains("Unfolded");
    window.press(KeyEvent.VK_ENTER);
    assertThat(spoken(view)).contains("Folded");
    assertThat(window.ask(() -> walk().visible())).hasSize(1);
    window.press(KeyEvent.VK_RIGHT);
    assertThat(window.ask(() -> walk().visible()).size()).isGreaterThan(1);
    window.press(KeyEvent.VK_LEFT);
    assertThat(window.ask(() -> walk().visible())).hasSize(1);
    assertThat(window.ask(() -> desk().trace().trace().orElseThrow().trail())).isEmpty();
  }

  @Test
  void theMouseSelectsAndFolds() {
    TreeCanvas view = lookAtTree();
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_HOME);
    window.until("the root is selected", () -> selected() == 1);
    int before = window.ask(() -> walk().visible().size());
    Rectangle root = window.ask(() -> view.onScreen(walk().tree().root()).orElseThrow());
    window.click(view, new Point(root.x + root.width + 2, root.y + root.height / 2));
    window.until("it is folded", () -> walk().visible().size() < before);
    Rectangle folded = window.ask(() -> view.onScreen(walk().tree().root()).orElseThrow());
    Point inside = new Point(folded.x + 20, folded.y + folded.height / 2);
    window.click(view, inside, 2);
    window.until("it is unfolded", () -> walk().visible().size() == before);
    assertThat(selected()).isEqualTo(1);
  }

  @Test
  void theKeysOfTextSizeZoomTheTreeInsteadWhileItHasTheFocus() {
    TreeCanvas view = lookAtTree();
    int usual = window.ask(() -> desk().settings().textPercent());
    window.press(KeyEvent.VK_0, KeyEvent.VK_CONTROL);
    int width = window.ask(() -> view.getPreferredSize().width);
    window.press(KeyEvent.VK_MINUS, KeyEvent.VK_CONTROL);
    assertThat(window.ask(() -> view.getPreferredSize().width)).isLessThan(width);
    window.press(KeyEvent.VK_0, KeyEvent.VK_CONTROL);
    assertThat(window.ask(() -> view.getPreferredSize().width)).isEqualTo(width);
    window.click("tree-larger");
    assertThat(window.ask(() -> view.getPreferredSize().width)).isGreaterThan(width);
    window.click("tree-unfold");
    window.click("tree-fit");
    assertThat(window.ask(() -> view.getVisibleRect().height))
        .isEqualTo(window.ask(view::getHeight));
    assertThat(window.ask(() -> desk().settings().textPercent())).isEqualTo(usual);
  }

  @Test
  void whereTheTraceStandsIsMarkedAfterAnAnswer() {
    window.press(KeyEvent.VK_1);
    window.press(KeyEvent.VK_SPACE);
    window.until("it is noted", () -> trace().trail().size() == 1);
    TreeCanvas view = lookAtTree();
    assertThat(window.ask(() -> walk().here().orElseThrow().at())).isEqualTo(trace());
    assertThat(spoken(view)).startsWith("You are here.");
    assertThat(texts()).anyMatch(text -> text.endsWith("You are here."));
    window.press(KeyEvent.VK_HOME);
    assertThat(spoken(view)).doesNotStartWith("You are here.");
    window.press(KeyEvent.VK_H);
    assertThat(spoken(view)).startsWith("You are here.");
    window.click("start-again");
    window.until("at the beginning", () -> trace().trail().isEmpty());
    window.until("the mark follows", () -> walk().here().orElseThrow().number() == 1);
    assertThat(selected()).isEqualTo(1);
  }

  private Trace trace() {
    return window.ask(() -> desk().trace().trace().orElseThrow());
  }

  @Test
  void anotherWayThanTheTreesIsSaidPlainly() {
    String first = window.ask(() -> desk().trace().step().orElseThrow().id());
    String other = first.equals("clip") ? "when" : "clip";
    window.act(() -> desk().trace().cantTell(other));
    window.until("it is noted", () -> trace().trail().size() == 1);
    lookAtTree();
    assertThat(texts()).anyMatch(text -> text.startsWith("You went another way"));
    window.click("tree-other");
    window.until(
        "it is said",
        () -> texts().stream().anyMatch(text -> text.contains("so where you are is not on it")));
  }

  @Test
  void theReasonsHaveARowForEachAnswerAndOtherStepsCanBeChosen() {
    Trace before = trace();
    window.press(KeyEvent.VK_Y, KeyEvent.VK_ALT);
    window.until("it is worked out", () -> !desk().aspects().why().effects().isEmpty());
    JTable effects = window.find("effects", JTable.class);
    assertThat(window.ask(effects::getRowCount)).isEqualTo(before.outcomes(before.next()).size());
    assertThat(texts()).anyMatch(text -> text.contains("proven"));
    CardList<?> options = window.find("options", CardList.class);
    assertThat(window.ask(() -> options.getModel().getSize()))
        .isEqualTo(before.alternatives().size());
    window.focus("options");
    window.press(KeyEvent.VK_DOWN);
    var second = before.alternatives().get(1).step();
    window.until(
        "the second one is worked out",
        () ->
            desk().aspects().why().chosen().equals(Optional.of(second))
                && !desk().aspects().why().isWorking());
    assertThat(window.ask(effects::getRowCount)).isEqualTo(before.outcomes(second).size());
    window.click("do-instead");
    window.until("it is shown", () -> desk().trace().step().equals(Optional.of(second)));
    assertThat(window.ask(() -> desk().aspects().now())).isEqualTo(Aspect.STEP);
    assertThat(trace()).isEqualTo(before);
  }

  @Test
  void everythingHasANameAndHoldsWithLargeText() {
    window.act(() -> desk().settings().textPercent(200));
    TreeCanvas view = lookAtTree();
    window.act(() -> desk().window().frame().setSize(1000, 680));
    assertThat(window.ask(() -> view.getAccessibleContext().getAccessibleName()))
        .isEqualTo("The whole tree");
    for (java.awt.Component component : window.showing()) {
      if (component instanceof AbstractButton button && !button.getText().isEmpty()) {
        assertThat(window.ask(button::getHeight))
            .as(button.getText())
            .isGreaterThanOrEqualTo(window.ask(() -> button.getPreferredSize().height));
      }
    }
    assertThat(window.find("tree", JComponent.class).isShowing()).isTrue();
  }
}
