package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.Stage;
import limberboard.desktop.write.state.OpenPage;
import org.junit.jupiter.api.Test;

/** The Write place through real keyboard events alone. */
class WriteWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int SHIFT = KeyEvent.VK_SHIFT;
  private static final String SYMPTOM = "wet-locker";

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> focusIs(name));
  }

  private static boolean focusIs(String name) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private Optional<OpenPage> page() {
    return desk().writePlace().model().current();
  }

  private String text() {
    return window.ask(() -> window.find("write-text", JTextComponent.class).getText());
  }

  private static String selected() {
    return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()
            instanceof JTextComponent text
        ? text.getSelectedText()
        : "";
  }

  private boolean says(String what) {
    return window.showing().stream()
        .filter(Wrapped.class::isInstance)
        .anyMatch(each -> ((Wrapped) each).getText().contains(what));
  }

  private Path file(String path) {
    return window.folders().articles().resolve(path);
  }

  /** Opens a page by some letters of its title. */
  private void openPage(String letters, String id) {
    window.press(KeyEvent.VK_G, CTRL);
    untilFocused("write-filter");
    window.type(letters);
    window.press(KeyEvent.VK_ENTER);
    window.until("it is open", () -> page().filter(now -> now.id().equals(id)).isPresent());
    untilFocused("write-text");
  }

  private void untilNothingIsWrong() {
    window.until(
        "the text is looked at", () -> page().filter(WriteWindowTest::isLookedAt).isPresent());
    assertThat(window.ask(() -> page().orElseThrow().problems()))
        .extracting(each -> each.problem().toString())
        .isEmpty();
  }

  private static boolean isLookedAt(OpenPage page) {
    return page.checked().filter(found -> found.text().equals(page.text())).isPresent();
  }

  private void save() {
    window.press(KeyEvent.VK_S, CTRL);
    window.until("it is saved", () -> page().filter(now -> !now.isChanged()).isPresent());
  }

  private void rename(String to) {
    window.press(KeyEvent.VK_F2);
    untilFocused("write-rename");
    window.press(KeyEvent.VK_A, CTRL);
    window.type(to);
    window.press(KeyEvent.VK_ENTER);
    window.until("it is renamed", () -> page().filter(now -> now.id().equals(to)).isPresent());
    window.until("it is read", () -> desk().session().library().page(to).isPresent());
    untilFocused("write-text");
  }

  @Test
  void aProcedureIsBegunLinkedTracedToSavedRenamedAndRenamedBackByKeyboardAlone()
      throws IOException {
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    window.press(KeyEvent.VK_N, CTRL, SHIFT);
    untilFocused("write-new-title");
    window.type("Grease the hinge");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("write-text");
    assertThat(text()).startsWith("---\ntitle: Grease the hinge\n");
    assertThat(file("procedures/grease-the-hinge.md")).doesNotExist();
    window.until("it says what is missing", () -> says("problem"));
    window.press(KeyEvent.VK_A, CTRL);
    window.type(
        "---\n"
            + "title: Grease the hinge\n"
            + "system: deck\n"
            + "zones: [locker]\n"
            + "work: mend\nskill: owner\n"
            + "minutes: 5\n"
            + "---\n"
            + "1. Grease it.\n");
    untilNothingIsWrong();
    save();
    assertThat(Files.readString(file("procedures/grease-the-hinge.md"))).isEqualTo(text());
    openPage("water in the", SYMPTOM);
    window.press(KeyEvent.VK_END, CTRL);
    window.press(KeyEvent.VK_K, CTRL);
    untilFocused("write-filter");
    window.type("hinge");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("write-text");
    assertThat(text()).endsWith("[Grease the hinge](../procedures/grease-the-hinge.md)");
    causeIsAdded();
    save();
    window.until(
        "the library knows the link",
        () -> desk().session().library().linksFrom(SYMPTOM).contains("grease-the-hinge"));
    openPage("hinge", "grease-the-hinge");
    rename("oil-the-hinge");
    String symptom = Files.readString(file("symptoms/wet-locker.md"));
    assertThat(symptom)
        .contains("mend: oil-the-hinge")
        .endsWith("(../procedures/oil-the-hinge.md)");
    assertThat(file("procedures/grease-the-hinge.md")).doesNotExist();
    rename("grease-the-hinge");
    assertThat(Files.readString(file("symptoms/wet-locker.md")))
        .isEqualTo(symptom.replace("oil-the-hinge", "grease-the-hinge"));
    tracedTo();
  }

  /** A cause below the first one, its mend by completion. */
  private void causeIsAdded() {
    window.press(KeyEvent.VK_HOME, CTRL);
    for (int i = 0; i < 40 && !lineAtCaret().equals("causes:"); i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    window.press(KeyEvent.VK_END);
    window.type("\n  - id: hinge\n    title: The hinge binds\n    weight: 9\n    mend: gre");
    window.press(KeyEvent.VK_SPACE, CTRL);
    window.until("it is offered", () -> window.shows("write-completion"));
    window.press(KeyEvent.VK_ENTER);
    assertThat(text()).contains("    mend: grease-the-hinge\n");
    untilNothingIsWrong();
  }

  private String lineAtCaret() {
    int caret =
        window.ask(() -> window.find("write-text", JTextComponent.class).getCaretPosition());
    String text = text();
    int from = text.lastIndexOf('\n', caret - 1) + 1;
    return text.substring(from, text.indexOf('\n', from));
  }

  private void tracedTo() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.act(() -> desk().navigator().trace(SYMPTOM));
    window.until("it is traced", () -> desk().trace().stage() != Stage.CHOOSING);
    assertThat(
            window.ask(
                () ->
                    desk()
                        .session()
                        .library()
                        .symptom(SYMPTOM)
                        .orElseThrow()
                        .details()
                        .causes()
                        .stream()
                        .map(each -> each.id())
                        .toList()))
        .contains("hinge");
  }

  @Test
  void whatIsReadIsWrittenAtTheSamePlaceAndF4GoesBack() throws IOException {
    Files.writeString(
        file("topics/long.md"),
        "---\ntitle: Long\n---\n# First\n"
            + "Words. ".repeat(900)
            + "\n\n# Second\n"
            + "Words. ".repeat(900)
            + "\n");
    window.press(KeyEvent.VK_F5);
    window.until("it is read", () -> desk().session().library().page("long").isPresent());
    window.act(() -> desk().navigator().openPage("long"));
    untilFocused("page");
    window.press(KeyEvent.VK_END);
    window.press(KeyEvent.VK_F4);
    untilFocused("write-text");
    int caret =
        window.ask(() -> window.find("write-text", JTextComponent.class).getCaretPosition());
    assertThat(text().substring(caret)).startsWith("# Second");
    window.press(KeyEvent.VK_F4);
    untilFocused("page");
  }

  @Test
  void undoReachesBackAcrossSavesAndProblemsAreGoneTo() throws IOException {
    Path file = file("procedures/replace-gasket.md");
    String before = Files.readString(file);
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    openPage("gasket", "replace-gasket");
    window.press(KeyEvent.VK_END, CTRL);
    window.type("One");
    save();
    window.type(" [two](three.md)");
    window.until("it is wrong", () -> says("1 problem"));
    window.press(KeyEvent.VK_HOME, CTRL);
    window.press(KeyEvent.VK_F8);
    window.until(
        "the link is selected",
        () -> "three.md".equals(window.find("write-text", JTextComponent.class).getSelectedText()));
    save();
    for (int i = 0; i < 12 && !text().equals(before); i++) {
      window.press(KeyEvent.VK_Z, CTRL);
    }
    assertThat(text()).isEqualTo(before);
    save();
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void theProofreaderSpeaksWhileItIsTypedAndOneKeyMendsWhatIsCertain() throws IOException {
    Files.writeString(file("proofreading.yaml"), "cautions: [{words: [petrol], carry: [gas]}]\n");
    String before = Files.readString(file("procedures/seal-vent.md"));
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    openPage("vent", "seal-vent");
    untilNothingIsWrong();
    window.press(KeyEvent.VK_END, CTRL);
    window.type("2. Drain the petrol.");
    window.until("it is found", () -> says("1 finding of the proofreader"));
    window.press(KeyEvent.VK_F8);
    window.until("its words are selected", () -> "petrol".equals(selected()));
    window.focus("write-problems");
    window.press(KeyEvent.VK_HOME);
    window.press(KeyEvent.VK_ENTER, CTRL);
    String mended = before.replace("}\n---\n", "}\ncautions: [gas]\n---\n");
    assertThat(text()).isEqualTo(mended + "2. Drain the petrol.");
    window.until("it is silent", () -> says("Nothing is wrong with this page."));
    window.focus("write-text");
    window.press(KeyEvent.VK_Z, CTRL);
    window.until("it speaks again", () -> says("1 finding of the proofreader"));
    window.focus("write-problems");
    window.press(KeyEvent.VK_HOME);
    window.focus("write-answer");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("write-answer-why");
    window.type("it is empty");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("write-text");
    assertThat(text()).contains("answered: [{rule: no-caution, about: gas, why: it is empty}]\n");
    window.until("it is answered", () -> says("Nothing is wrong with this page."));
  }

  @Test
  void whatSomebodyElseWroteIsShownBesideAndTextIsKeptWhereThePlaceIsLeft() throws IOException {
    Path file = file("procedures/replace-gasket.md");
    String theirs = Files.readString(file) + "Theirs.\n";
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    openPage("gasket", "replace-gasket");
    window.press(KeyEvent.VK_END, CTRL);
    window.type("Mine.");
    Files.writeString(file, theirs);
    window.press(KeyEvent.VK_S, CTRL);
    untilFocused("write-differences");
    assertThat(Files.readString(file)).isEqualTo(theirs);
    window.press(KeyEvent.VK_ESCAPE);
    untilFocused("write-text");
    window.press(KeyEvent.VK_2, CTRL);
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-text");
    assertThat(text()).endsWith("Mine.");
    window.press(KeyEvent.VK_F7);
    untilFocused("write-differences");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is theirs", () -> page().filter(now -> !now.isChanged()).isPresent());
    untilFocused("write-text");
    assertThat(text()).isEqualTo(theirs);
  }

  @Test
  void theHeaderIsChangedAsAFormAndUndoneAsText() {
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    openPage("gasket", "replace-gasket");
    String before = text();
    window.act(() -> desk().writePlace().look("header"));
    window.until("the form is filled", () -> window.shows("write-field-title"));
    window.focus("write-field-title");
    window.press(KeyEvent.VK_A, CTRL);
    window.type("Renew the gasket");
    window.press(KeyEvent.VK_ENTER);
    window.until("the text follows", () -> text().contains("title: Renew the gasket\n"));
    window.focus("write-text");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(text()).isEqualTo(before);
  }

  @Test
  void inTheSmallestWindowWithLargeTextNothingIsOutOfReach() {
    window.act(() -> desk().window().frame().setSize(1024, 700));
    window.act(() -> desk().settings().textPercent(200));
    window.press(KeyEvent.VK_7, CTRL);
    untilFocused("write-filter");
    openPage("gasket", "replace-gasket");
    window.type("x");
    for (String name : List.of("write-save", "write-choose", "write-new", "write-more")) {
      assertThat(window.shows(name)).as(name).isTrue();
    }
    window.press(KeyEvent.VK_Z, CTRL);
  }
}
