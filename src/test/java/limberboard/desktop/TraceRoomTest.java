package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.io.IOException;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The question and the mend always have at least half the height of the place, at the sizes of the
 * screens in use and with text of up to twice the usual size. On the demo's boats, whose pages are
 * as long as pages are. Needs a display; a virtual one will do.
 */
class TraceRoomTest {
  private static MeasuredWindow window;
  private static WindowAssembly desk;

  @BeforeAll
  static void open() throws IOException {
    window = MeasuredWindow.open(new Dimension(1280, 800), "the room of the trace");
    desk = window.desk();
  }

  @AfterAll
  static void close() throws IOException {
    if (window != null) {
      window.close();
    }
  }

  static Stream<Arguments> sizes() {
    return Stream.of(new Dimension(1024, 700), new Dimension(1280, 800), new Dimension(1920, 1080))
        .flatMap(
            size ->
                Stream.of(100, 150, 200).map(text -> Arguments.of(size.width, size.height, text)));
  }

  private static void show(Scene scene, int width, int height, int text) throws IOException {
    OnEventThread.run(
        () -> {
          desk.trace().finish();
          scene.set(desk);
          desk.settings().textPercent(text);
          JFrame frame = desk.window().frame();
          frame.setSize(width, height);
        });
    window.settle(6);
  }

  private static int half() throws IOException {
    return OnEventThread.get(() -> desk.place("trace").component().getHeight() / 2);
  }

  private static Optional<JComponent> named(String name) {
    return MeasuredWindow.all(desk.window().frame().getRootPane(), JComponent.class).stream()
        .filter(each -> name.equals(each.getName()))
        .findFirst();
  }

  private static int visibleHeight(String name) throws IOException {
    return OnEventThread.get(() -> named(name).orElseThrow().getVisibleRect().height);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theQuestionHasHalfTheHeightAndIsWholeInSight(int width, int height, int text)
      throws IOException {
    show(Scene.TRACE_DURING, width, height, text);
    assertThat(visibleHeight("trace-step")).isGreaterThanOrEqualTo(half());
    boolean whole =
        OnEventThread.get(
            () -> {
              String ask = desk.trace().step().orElseThrow().text();
              Wrapped question =
                  MeasuredWindow.all(desk.window().frame().getRootPane(), Wrapped.class).stream()
                      .filter(words -> words.getText().equals(ask))
                      .findFirst()
                      .orElseThrow();
              return question.getVisibleRect().height == question.getHeight()
                  && question.getHeight() > 0;
            });
    assertThat(whole).as("the whole question is in sight").isTrue();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theMendsPageHasHalfTheHeight(int width, int height, int text) throws IOException {
    show(Scene.TRACE_AFTER, width, height, text);
    assertThat(OnEventThread.get(() -> desk.trace().stage())).isEqualTo(Stage.MEND);
    assertThat(visibleHeight("page")).isGreaterThanOrEqualTo(half());
  }

  /** The first step's place in a page is reckoned with this room, by {@code OnePageDownTest}. */
  @ParameterizedTest
  @CsvSource({"PAGES, 600, 660", "TRACE_AFTER, 750, 540"})
  void aPageHasTheRoomThatIsReckonedWith(Scene scene, int width, int height) throws IOException {
    show(scene, 1280, 800, 100);
    assertThat(visibleHeight("page")).isGreaterThanOrEqualTo(height);
    assertThat(OnEventThread.get(() -> named("page").orElseThrow().getVisibleRect().width))
        .isGreaterThanOrEqualTo(width);
  }
}
