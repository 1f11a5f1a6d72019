package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import javax.swing.JButton;
import limberboard.desktop.support.SmallPrinter;
import limberboard.desktop.trace.Stage;
import limberboard.print.PdfLetters;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.TreeCut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Card and tree printed and saved from the window, through real events. Needs a display; a virtual
 * one will do.
 */
class TreePapersWindowTest extends RealWindow {
  @BeforeEach
  void boat() {
    window.act(() -> desk().window().frame().setSize(new Dimension(1280, 800)));
    window.act(() -> desk().session().choose(Optional.of("knot")));
  }

  private void lookAtTree() {
    window.act(() -> desk().navigator().trace("wet-locker"));
    window.until("it is begun", () -> desk().trace().trace().isPresent());
    window.act(
        () -> {
          if (desk().trace().stage() == Stage.CAUTIONS) {
            desk().trace().cautionsRead();
          }
        });
    window.press(KeyEvent.VK_W, KeyEvent.VK_ALT);
    window.until("the tree has grown", () -> desk().aspects().tree().walk().isPresent());
  }

  private void readSymptom() {
    window.act(() -> desk().navigator().openPage("wet-locker"));
    window.until(
        "the page is read",
        () ->
            window.showing().stream().anyMatch(one -> "page".equals(one.getName()))
                && window.words("page").contains("locker"));
  }

  /** Presses a button by keyboard, in the menu where it has no room beside the others. */
  private void press(String name, String menu) {
    if (window.shows(name)) {
      window.focus(name);
      window.press(KeyEvent.VK_SPACE);
    } else {
      window.focus(menu);
      window.press(KeyEvent.VK_SPACE);
      window.click(name);
    }
  }

  private SmallPrinter.Job printed(int jobs) {
    window.until("it is printed", () -> window.printer().jobs().size() == jobs);
    return window.printer().jobs().get(jobs - 1);
  }

  private static String letters(SmallPrinter.Job job) {
    return PdfLetters.of(job.pdf()).all().stream()
        .map(PdfLetters.Letter::text)
        .collect(Collectors.joining());
  }

  private static long sheets(SmallPrinter.Job job) {
    return PdfLetters.of(job.pdf()).all().stream()
        .mapToInt(PdfLetters.Letter::sheet)
        .max()
        .orElse(1);
  }

  private String told() {
    return window.ask(() -> desk().notices().current().map(notice -> notice.text()).orElse(""));
  }

  @Test
  void cardAndTreeOfASymptomArePrintedAndSavedBeforeItIsTraced() {
    readSymptom();
    press("print-tree", "page-more");
    SmallPrinter.Job tree = printed(1);
    assertThat(tree.name()).isEqualTo("tree-wet-locker-knot");
    assertThat(letters(tree)).contains("Thesteps");
    press("print-card", "page-more");
    SmallPrinter.Job card = printed(2);
    assertThat(card.name()).isEqualTo("card-wet-locker-knot");
    assertThat(card.pdf()).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    press("save-card", "page-more");
    window.until("it is saved", () -> told().contains("card-wet-locker-knot.pdf"));
    press("save-tree", "page-more");
    window.until("it is saved", () -> told().contains("tree-wet-locker-knot.pdf"));
    assertThat(window.folders().root().resolve("tree-wet-locker-knot.pdf")).isNotEmptyFile();
    assertThat(window.ask(() -> desk().trace().trace())).isEmpty();
  }

  @Test
  void withoutABoatOrASymptomThereIsNoCardToPress() {
    readSymptom();
    assertThat(window.ask(() -> button("print-card").isEnabled())).isTrue();
    window.act(() -> desk().session().choose(Optional.empty()));
    assertThat(window.ask(() -> button("print-card").isEnabled())).isFalse();
    window.act(() -> desk().session().choose(Optional.of("knot")));
    assertThat(window.ask(() -> button("print-card").isEnabled())).isTrue();
    window.act(() -> desk().navigator().openPage("replace-gasket"));
    window.until(
        "the page is read", () -> window.words("page").contains("Replace the locker gasket"));
    assertThat(window.ask(() -> button("save-tree").isEnabled())).isFalse();
  }

  /** The button of this name, whether it is in sight or in the menu. */
  private JButton button(String name) {
    return window.robot().finder().findByName(desk().window().frame(), name, JButton.class, false);
  }

  @Test
  void asManyLevelsAsAreChosenByKeyArePrinted() {
    lookAtTree();
    window.focus("tree-levels");
    window.press(KeyEvent.VK_DOWN);
    window.until("one level", () -> desk().aspects().tree().levels().equals(OptionalInt.of(1)));
    TreeCut cut = window.ask(() -> desk().aspects().tree().cut().orElseThrow());
    assertThat(window.ask(() -> desk().aspects().tree().walk().orElseThrow().visible()))
        .containsExactlyElementsOf(
            cut.tree().forks().stream().filter(fork -> fork.at().trail().size() < 2).toList());
    press("tree-print", "tree-more");
    SmallPrinter.Job one = printed(1);
    assertThat(one.name()).isEqualTo("tree-wet-locker-knot");
    assertThat(letters(one)).contains("Thisisapartofthetree:1ofits");
    for (Fork end : cut.ends()) {
      assertThat(letters(one)).contains("goesonat" + end.number() + ",");
    }
    window.focus("tree-levels");
    window.press(KeyEvent.VK_UP);
    window.until("all levels", () -> desk().aspects().tree().levels().isEmpty());
    press("tree-print", "tree-more");
    assertThat(letters(printed(2))).doesNotContain("goesonat");
  }

  @Test
  void theCardAndTheDrawingAreMadeBesideTheTree() throws Exception {
    lookAtTree();
    press("tree-card-print", "tree-more");
    SmallPrinter.Job card = printed(1);
    assertThat(card.name()).isEqualTo("card-wet-locker-knot");
    assertThat(sheets(card)).isEqualTo(1);
    press("tree-card-pdf", "tree-more");
    window.until("it is saved", () -> told().contains("card-wet-locker-knot.pdf"));
    press("tree-svg", "tree-more");
    window.until("it is drawn", () -> told().contains("tree-wet-locker-knot.svg"));
    assertThat(Files.readString(window.folders().root().resolve("tree-wet-locker-knot.svg")))
        .startsWith("<svg ");
  }

  @Test
  void withoutAPrinterItSaysSoAndOffersThePdf() {
    window.printer().takeAway();
    readSymptom();
    press("print-card", "page-more");
    window.until("it is said", () -> told().contains("No printer is set up"));
    window.click("notice-Save as PDF …");
    window.until("it is saved", () -> told().contains("card-wet-locker-knot.pdf"));
    assertThat(window.printer().jobs()).isEmpty();
  }

  @Test
  void whatCannotBeWrittenIsSaid() throws Exception {
    Files.createDirectories(
        window.folders().root().resolve("tree-wet-locker-knot.pdf").resolve("full"));
    readSymptom();
    press("save-tree", "page-more");
    window.until("it is said", () -> told().contains("tree-wet-locker-knot.pdf"));
    assertThat(told()).doesNotStartWith("Saved");
    assertThat(List.of(told())).noneMatch(text -> text.contains("Exception"));
  }
}
