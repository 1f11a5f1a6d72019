package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The plan in the Upkeep place through real mouse and keyboard events. */
class PlanWindowTest extends RealWindow {
  @BeforeEach
  void goTo() {
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(LocalDate.of(2028, 3, 20)));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.press(KeyEvent.VK_N, KeyEvent.VK_ALT);
    window.until("the form is there", () -> window.shows("plan-hours"));
  }

  private void untilWords(String what) {
    window.until(
        "it says " + what,
        () ->
            window.showing().stream()
                .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what)));
  }

  private void untilPageSays(String what) {
    window.until(
        "the sheet says " + what,
        () ->
            window.showing().stream().anyMatch(one -> "page".equals(one.getName()))
                && window.words("page").replace('\u00a0', ' ').contains(what));
  }

  private void until(String day) {
    window.focus("plan-until");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type(day);
  }

  @Test
  void byKeyboardAloneFromTheHoursToTheLog() throws IOException {
    untilWords("Write how many hours there are");
    assertThat(window.find("plan-until", JTextComponent.class).getText()).isNotEmpty();
    until("30 April 2028");
    window.focus("plan-hours");
    window.type("4");
    window.press(KeyEvent.VK_ENTER);
    untilPageSays("Replace the locker gasket");
    untilPageSays("No choice takes more danger out");
    window.focus("plan-pdf");
    window.press(KeyEvent.VK_ENTER);
    Path pdf = folder.resolve("plan-knot-2028-04-30.pdf");
    window.until(
        "the plan is written",
        () -> desk().notices().current().filter(n -> n.text().contains(".pdf")).isPresent());
    assertThat(pdf).exists();
    window.focus("plan-hours");
    window.press(KeyEvent.VK_F6);
    window.press(KeyEvent.VK_F6);
    window.until("the lines", () -> window.find("plan-lines", JComponent.class).hasFocus());
    assertThat(window.ask(() -> ring("plan-lines"))).isTrue();
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_SPACE);
    window.until("it is ticked", () -> window.shows("plan-mark-ticked"));
    window.focus("plan-mark-ticked");
    window.press(KeyEvent.VK_ENTER);
    window.until("the form for the log is there", () -> window.shows("write-done"));
    assertThat(window.slowOnEventThread()).isEmpty();
  }

  /** Whether the first entry of a list is drawn otherwise with the focus than without. */
  private boolean ring(String list) {
    JList<?> lines = window.find(list, JList.class);
    Rectangle first = lines.getCellBounds(0, 0);
    BufferedImage with = new BufferedImage(lines.getWidth(), first.height, 1);
    lines.paint(with.getGraphics());
    int accent = Palette.ACCENT.color().getRGB();
    return IntStream.range(0, with.getWidth() * with.getHeight())
        .anyMatch(at -> with.getRGB(at % with.getWidth(), at / with.getWidth()) == accent);
  }

  @Test
  void anotherPlanIsReadFromItsBeginning() {
    until("30 April 2028");
    window.focus("plan-hours");
    window.type("4");
    window.press(KeyEvent.VK_ENTER);
    untilPageSays("Replace the locker gasket");
    window.act(() -> window.desk().window().frame().setSize(1024, 500));
    window.focus("page");
    window.press(KeyEvent.VK_END);
    window.until("it is scrolled", () -> scrolled() > 0);
    window.focus("plan-hours");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("5");
    window.press(KeyEvent.VK_ENTER);
    window.until("it begins at its top", () -> scrolled() == 0);
    untilPageSays("of the 5 h there are");
    assertThat(scrolled()).isZero();
  }

  private int scrolled() {
    JComponent page = window.find("page", JComponent.class);
    return window.ask(() -> page.getVisibleRect().y);
  }

  @Test
  void saysWhatIsWrongAndTakesWhatIsPutRight() {
    until("31 April 2028");
    window.focus("plan-hours");
    window.type("4");
    window.press(KeyEvent.VK_ENTER);
    untilWords("April 2028 has no day 31");
    until("30 April 2028");
    window.click("plan-it");
    untilPageSays("Replace the locker gasket");
  }

  @Test
  void theKeyThatSavesPlansWhatIsTypedAndSavesIt() {
    until("30 April 2028");
    window.focus("plan-days");
    window.type("8-9 Apr=2");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    window.until(
        "the plan is written",
        () -> desk().notices().current().filter(n -> n.text().contains(".pdf")).isPresent());
    assertThat(folder.resolve("plan-knot-2028-04-30.pdf")).exists();
    untilPageSays("8 Apr 2028");
  }

  @Test
  void theKeyThatSavesSaysWhatIsWrongInsteadOfSaving() {
    until("31 April 2028");
    window.focus("plan-hours");
    window.type("4");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    untilWords("April 2028 has no day 31");
    assertThat(folder.resolve("plan-knot-2028-04-30.pdf")).doesNotExist();
    assertThat(desk().notices().current()).isEmpty();
  }

  @Test
  void whatIsPlannedIsShoppedFor() throws IOException {
    until("30 April 2028");
    window.focus("plan-hours");
    window.type("4");
    window.press(KeyEvent.VK_ENTER);
    untilPageSays("Replace the locker gasket");
    window.press(KeyEvent.VK_F, KeyEvent.VK_ALT);
    untilPageSays("1 × reel of 5 m");
    window.click("shopping-csv");
    window.until(
        "the list is written",
        () -> desk().notices().current().filter(n -> n.text().contains(".csv")).isPresent());
    assertThat(Files.readString(folder.resolve("shopping-knot-plan-2028-04-30.csv")))
        .contains("gasket");
  }
}
