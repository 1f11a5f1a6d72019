package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices.Notice;
import limberboard.desktop.boats.Field;
import limberboard.desktop.drawing.BoatView;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.trace.Stage;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import org.junit.jupiter.api.Test;

/** The window through real mouse and keyboard events. Needs a display; a virtual one will do. */
class WindowTest extends RealWindow {
  private void chooseKnot() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
  }

  private Stage stage() {
    return window.ask(() -> desk().trace().stage());
  }

  private String page() {
    return window.ask(() -> desk().reading().page().map(Page::id).orElse(""));
  }

  private void untilStage(Stage stage) {
    window.until("the stage is " + stage, () -> desk().trace().stage() == stage);
  }

  @Test
  void typingInTheSearchFieldShowsHitsAndEnterOpensTheFirst() {
    window.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL);
    window.type("gasket strip");
    window.until(
        "hits for what was typed",
        () -> desk().search().isUpToDate() && !desk().search().found().isEmpty());
    CardList<?> hits = window.find("hits", CardList.class);
    assertThat(hits.getModel().getSize()).isPositive();
    window.press(KeyEvent.VK_ENTER);
    window.until("a page is open", () -> desk().reading().page().isPresent());
    assertThat(page()).isEqualTo("gasket-strip");
    assertThat(window.find("page", JComponent.class).isShowing()).isTrue();
  }

  @Test
  void arrowsMoveThroughTheHitsAndEscapePutsThemAway() {
    window.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL);
    window.type("locker");
    window.until(
        "several hits", () -> desk().search().isUpToDate() && desk().search().found().size() > 1);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    String second = window.ask(() -> desk().search().found().get(1).target().id());
    window.press(KeyEvent.VK_ESCAPE);
    assertThat(window.showing()).noneMatch(component -> "hits".equals(component.getName()));
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    window.until("the second hit is open", () -> !page().isEmpty());
    assertThat(page()).isEqualTo(second);
  }

  @Test
  void theMousePointsAtAZoneAndAClickChoosesIt() {
    chooseKnot();
    BoatView profile = window.find("profile", BoatView.class);
    window.until("the boat is drawn", () -> middleOf(profile).isPresent());
    window.robot().moveMouse(profile, middleOf(profile).orElseThrow());
    window.until(
        "the locker is named",
        () -> "Profile: Locker".equals(profile.getAccessibleContext().getAccessibleDescription()));
    assertThat(window.ask(() -> desk().trace().where().zone())).isEmpty();
    window.click(profile, middleOf(profile).orElseThrow());
    window.until("the locker is chosen", () -> desk().trace().where().zone().isPresent());
    assertThat(window.ask(() -> desk().trace().where().zone())).contains("locker");
    CardList<?> symptoms = window.find("symptoms", CardList.class);
    assertThat(window.ask(() -> symptoms.getModel().getSize())).isEqualTo(1);
  }

  private Optional<Point> middleOf(BoatView view) {
    Optional<Point2D> onScreen = view.onScreen(new Point2D.Double(325, 145));
    return onScreen.map(point -> new Point((int) point.getX(), (int) point.getY()));
  }

  @Test
  void theKeyboardPointsAtZonesToo() {
    chooseKnot();
    BoatView profile = window.find("profile", BoatView.class);
    window.until("the boat is drawn", () -> middleOf(profile).isPresent());
    window.focus("profile");
    window.press(KeyEvent.VK_RIGHT);
    assertThat(window.ask(() -> profile.getAccessibleContext().getAccessibleDescription()))
        .isEqualTo("Profile: Bow");
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_ENTER);
    assertThat(window.ask(() -> desk().trace().where().zone())).contains("locker");
    window.press(KeyEvent.VK_ESCAPE);
    assertThat(window.ask(() -> desk().trace().where().zone())).isEmpty();
  }

  @Test
  void aFaultIsTracedFromSymptomToMendWithTheKeyboard() {
    chooseKnot();
    window.focus("symptoms");
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.CAUTIONS);
    assertThat(texts()).contains("Water that gains on the pump sinks the boat.");
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_SPACE);
    assertThat(stage()).as("read only where that is in focus").isEqualTo(Stage.CAUTIONS);
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.CHECK);
    String first = window.ask(() -> desk().trace().step().orElseThrow().text());
    assertThat(texts()).contains(first);
    pressSixTimes();
    assertThat(answers()).as("no key answers a question unread").isZero();
    window.press(KeyEvent.VK_2);
    window.press(KeyEvent.VK_LEFT);
    window.press(KeyEvent.VK_ENTER);
    window.until("an answer is noted", () -> answers() == 1);
    pressSixTimes();
    assertThat(answers()).as("one answer, one question").isEqualTo(1);
    changeFirstAnswer();
    String changed = window.ask(() -> desk().trace().trace().orElseThrow().answers().toString());
    window.click("take-back-1");
    window.until("the answer is taken back", () -> answers() == 0);
    assertThat(changed).isNotEqualTo("{}");
    assertThat(texts()).contains(first);
    answerAsTheHoseWould();
    untilStage(Stage.MEND);
    window.focus("did-not-help");
    window.press(KeyEvent.VK_SPACE);
    window.until("the mend is noted", () -> answers() >= 1 && stage() != Stage.MEND);
  }

  private void pressSixTimes() {
    for (int i = 0; i < 6; i++) {
      window.press(KeyEvent.VK_ENTER);
      window.press(KeyEvent.VK_SPACE);
    }
  }

  @Test
  void onTheMendsPageKeysMoveThePageAndDeclareNothing() {
    traceToTheMend();
    window.until("the page has the focus", () -> focused().equals("page"));
    pressSixTimes();
    window.press(KeyEvent.VK_PAGE_DOWN);
    assertThat(stage()).isEqualTo(Stage.MEND);
    window.focus("it-is-mended");
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.MENDED);
  }

  private void traceToTheMend() {
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.click("cautions-read");
    answerAsTheHoseWould();
    untilStage(Stage.MEND);
  }

  @Test
  void theNextStepIsCopiedInWordsForALetterWithItsCautions() {
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.click("cautions-read");
    untilStage(Stage.CHECK);
    window.click("copy-answer");
    window.until("it is copied", () -> !window.copied().isEmpty());
    assertThat(window.copied())
        .startsWith("Water in the locker, on Knot (")
        .contains("Caution: ")
        .contains("Next, please check: " + desk().trace().step().orElseThrow().text());
  }

  @Test
  void startingAgainIsUndoneByAKeyAndByAButton() {
    traceToTheMend();
    int given = answers();
    window.click("start-again");
    window.until("at the beginning", () -> answers() == 0 && stage() == Stage.CHECK);
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until("the answers are back", () -> answers() == given);
    window.press(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
    window.until("at the beginning again", () -> answers() == 0);
    window.click("undo-trace");
    window.until("the answers are back again", () -> answers() == given);
  }

  @Test
  void aTraceIsOfferedBackWhenTheWindowIsOpenedAgain() throws IOException {
    traceToTheMend();
    int given = answers();
    window.close();
    Memory memory = new Memory(new Forgetful());
    memory.remember("boat", "knot");
    window = SmallWindow.open(new WorkspaceFolders(folder), memory);
    window.until("it is offered", () -> !desk().trace().keptTraces().isEmpty());
    assertThat(texts())
        .anyMatch(text -> text.startsWith("Water in the locker, started on 20 May 2026"));
    window.click("go-on-wet-locker");
    untilStage(Stage.MEND);
    assertThat(answers()).isEqualTo(given);
  }

  /** Changes the first answer to the second one on offer, with the mouse. */
  private void changeFirstAnswer() {
    String before = window.ask(() -> desk().trace().trace().orElseThrow().answers().toString());
    window.click("change-1");
    JPopupMenu menu = window.robot().findActivePopupMenu();
    window.click((JMenuItem) menu.getComponent(1));
    window.until(
        "the answer is another one",
        () -> !desk().trace().trace().orElseThrow().answers().toString().equals(before));
    assertThat(answers()).isEqualTo(1);
  }

  private int answers() {
    return window.ask(() -> desk().trace().trace().map(trace -> trace.trail().size()).orElse(0));
  }

  private void answerAsTheHoseWould() {
    untilStage(Stage.CHECK);
    for (int i = 0; i < 3 && stage() == Stage.CHECK; i++) {
      String check = window.ask(() -> desk().trace().step().orElseThrow().id());
      String answer =
          switch (check) {
            case "when" -> "after-washing";
            case "clip" -> "turns";
            default -> "holds";
          };
      int before = answers();
      window.click("answer-" + answer);
      window.until("it is noted", () -> answers() == before + 1);
    }
  }

  @Test
  void aMendedFaultSaysHowOftenToLookAgain() {
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.click("cautions-read");
    answerAsTheHoseWould();
    untilStage(Stage.MEND);
    window.click("save-trace");
    Path sheet = window.folders().root().resolve("trace-wet-locker-knot.pdf");
    window.until("the sheet is there", () -> Files.isRegularFile(sheet));
    window.click("it-is-mended");
    untilStage(Stage.MENDED);
    assertThat(texts())
        .contains("Mended", "The drain hose weeps")
        .anyMatch(text -> text.startsWith("Replace the locker gasket. How often:"));
    window.focus("another-fault");
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.CHOOSING);
  }

  @Test
  void aMendIsWrittenIntoTheLogInOneStepAndTakenOutAgain() throws IOException {
    Path file = window.folders().boats().resolve("knot/log.csv");
    String before = Files.readString(file);
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.click("cautions-read");
    answerAsTheHoseWould();
    untilStage(Stage.MEND);
    window.focus("it-is-mended");
    window.press(KeyEvent.VK_SPACE);
    untilStage(Stage.MENDED);
    window.press(KeyEvent.VK_ENTER);
    assertThat(Files.readString(file)).isEqualTo(before);
    window.focus("write-mended");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is written", () -> desk().log().toUndo().isPresent());
    assertThat(Files.readString(file))
        .startsWith(before + "2026-05-20,tighten-hose,,")
        .endsWith(": The drain hose weeps\n");
    window.until(
        "it says so",
        () ->
            window
                .find("mended-words", Wrapped.class)
                .getText()
                .startsWith("Written: 20 May 2026, Tighten"));
    window.click("undo-log-mended");
    window.until("it is undone", () -> desk().log().toRedo().isPresent());
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void aMendedFaultIsKeptAsACaseAndTakenOutAgain() throws IOException {
    Path cases = window.folders().cases();
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.click("cautions-read");
    answerAsTheHoseWould();
    untilStage(Stage.MEND);
    window.click("it-is-mended");
    untilStage(Stage.MENDED);
    Path file = cases.resolve("2026-05-20-wet-locker.yaml");
    assertThat(file).doesNotExist();

    window.click("keep-case");
    window.until(
        "it says so",
        () ->
            window
                .find("case-words", Wrapped.class)
                .getText()
                .startsWith("Kept as the case 2026-05-20-wet-locker."));
    String text = Files.readString(file);
    assertThat(text)
        .contains("symptom: wet-locker", "cause: ", "outcome: mended", "mend: tighten-hose")
        .doesNotContain("knot", "Knot");
    window.until(
        "the trace has learnt it",
        () ->
            desk()
                .trace()
                .trace()
                .filter(
                    trace ->
                        trace.fault().chancesFrom().contains("case")
                            && desk().trace().stage() == Stage.MENDED)
                .isPresent());
    window.focus("take-case-out");
    window.press(KeyEvent.VK_K, KeyEvent.VK_CONTROL);
    window.until("it is gone", () -> !Files.exists(file));
    window.until("it is offered again", () -> window.find("keep-case", JButton.class).isShowing());
    window.focus("keep-case");
    window.press(KeyEvent.VK_K, KeyEvent.VK_CONTROL);
    window.until("it is there again", () -> Files.exists(file));
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  @Test
  void whatOnlySomebodyLicensedMayMendIsHandedOverWithWhatWasFound() {
    chooseKnot();
    window.act(() -> desk().navigator().trace("gas-smell"));
    untilStage(Stage.CAUTIONS);
    window.focus("cautions-read");
    window.press(KeyEvent.VK_ENTER);
    window.until("past the cautions", () -> desk().trace().stage() != Stage.CAUTIONS);
    if (stage() == Stage.CHECK) {
      window.click("cant-tell");
    }
    untilStage(Stage.YARD);
    window.click("copy-report");
    assertThat(window.copied()).startsWith("A smell of gas").contains("The gas line leaks");
    assertThat(texts()).anyMatch(text -> text.contains("only for a person licensed for it"));
  }

  private Set<String> texts() {
    Set<String> texts = new LinkedHashSet<>();
    for (Component component : window.showing()) {
      if (component instanceof Wrapped text) {
        texts.add(window.ask(text::getText));
      }
    }
    return texts;
  }

  @Test
  void pagesGoBackAndForwardByKeyboard() {
    chooseKnot();
    window.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
    window.act(() -> desk().reading().open("replace-gasket"));
    window.act(() -> desk().reading().open("tighten-hose"));
    window.focus("page");
    window.press(KeyEvent.VK_LEFT, KeyEvent.VK_ALT);
    assertThat(page()).isEqualTo("replace-gasket");
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_ALT);
    assertThat(page()).isEqualTo("tighten-hose");
  }

  @Test
  void theFilterNarrowsTheContentsAndTheTreeOpensPages() {
    window.press(KeyEvent.VK_2, KeyEvent.VK_CONTROL);
    window.focus("filter");
    window.type("torch");
    window.until("one group is left", () -> desk().reading().filter().equals("torch"));
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.until("the page is open", () -> page().equals("torch"));
  }

  @Test
  void aBoatIsChangedAndSaved() throws IOException {
    chooseKnot();
    window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
    JTextField name = window.find("boat-NAME", JTextField.class);
    window.click(name);
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("Red Knot");
    assertThat(texts()).contains("There are unsaved changes. Save writes them into the file.");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    window.until(
        "the boat is saved and read again",
        () -> desk().session().boat().map(boat -> boat.name().equals("Red Knot")).orElse(false));
    assertThat(Files.readString(window.folders().boats().resolve("knot/boat.yaml")))
        .contains("Red Knot");
    assertThat(texts()).contains("Everything is saved.", "Red Knot is saved.");
  }

  @Test
  void whatIsWrongInTheFormStandsBelowItsField() {
    chooseKnot();
    window.press(KeyEvent.VK_6, KeyEvent.VK_CONTROL);
    window.click("boat-HULL");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("150");
    assertThat(texts()).contains("Hull numbers of this model are 1 to 99.");
  }

  @Test
  void theThemeIsSwitchedFromTheMenuAndEverythingFollows() {
    chooseKnot();
    window.act(() -> desk().navigator().openPage("replace-gasket"));
    window.click("menu");
    window.click("menu-View");
    window.until("the submenu is open", () -> window.shows("theme-DARK"));
    window.click("theme-DARK");
    window.until("the theme is dark", Theme::isDark);
    assertThat(window.ask(() -> desk().settings().theme())).isEqualTo(ThemeChoice.DARK);
    for (Component component : window.showing()) {
      if (component instanceof Wrapped text) {
        int brightness = window.ask(() -> text.getForeground().getGreen());
        assertThat(brightness).as(text.getText()).isGreaterThan(120);
      }
    }
  }

  @Test
  void largeTextCutsNoButtonOff() {
    chooseKnot();
    window.act(() -> desk().settings().textPercent(200));
    for (int key :
        new int[] {
          KeyEvent.VK_1, KeyEvent.VK_2, KeyEvent.VK_3, KeyEvent.VK_4, KeyEvent.VK_5, KeyEvent.VK_6
        }) {
      window.press(key, KeyEvent.VK_CONTROL);
      for (Component component : window.showing()) {
        if (component instanceof AbstractButton button && !button.getText().isEmpty()) {
          assertThat(window.ask(button::getHeight))
              .as(button.getText())
              .isGreaterThanOrEqualTo(window.ask(() -> button.getPreferredSize().height));
        }
      }
    }
  }

  @Test
  void whereThereIsLittleRoomCausesAndAnswersAreBehindAButtonAndNothingIsLost() {
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.act(() -> desk().trace().cautionsRead());
    assertThat(texts()).contains("Likeliest causes");
    window.act(() -> desk().settings().textPercent(200));
    window.until("the causes are behind a button", () -> !texts().contains("Likeliest causes"));
    assertThat(texts()).contains("When does the water come?");
    window.focus("look-causes");
    window.press(KeyEvent.VK_SPACE);
    window.until("they are shown", () -> texts().contains("Likeliest causes"));
    assertThat(texts()).contains("Your answers so far");
    window.act(() -> desk().settings().textPercent(100));
    window.until("they stand beside again", () -> texts().contains("Likeliest causes"));
    assertThat(texts()).contains("When does the water come?");
  }

  @Test
  void filesThatChangeWhileTheWindowIsOpenAreReadAndNothingIsLost() throws IOException {
    chooseKnot();
    window.act(() -> desk().navigator().trace("wet-locker"));
    untilStage(Stage.CAUTIONS);
    window.act(() -> desk().trace().cautionsRead());
    window.act(() -> desk().trace().answer("when", "after-rain"));
    window.until("an answer is noted", () -> answers() == 1);
    Path file = window.folders().articles().resolve("symptoms/wet-locker.md");
    Files.writeString(
        file, Files.readString(file).replace("title: Water in the locker", "title: A wet locker"));
    window.act(() -> desk().loader().load());
    window.until(
        "the new title is there", () -> texts().stream().anyMatch("A wet locker, on Knot"::equals));
    assertThat(answers()).isEqualTo(1);
  }

  @Test
  void aFailureOffTheEventThreadIsShown() {
    window.failReading("the folder articles cannot be listed");
    window.act(() -> desk().loader().load());
    window.until("a notice", () -> desk().notices().current().map(Notice::failure).orElse(false));
    assertThat(texts()).anyMatch(text -> text.contains("the folder articles cannot be listed"));
  }

  @Test
  void f6GoesThroughTheRegionsOfThePlaceAndTheStripAndBack() {
    chooseKnot();
    window.focus("search");
    Set<String> names = new LinkedHashSet<>();
    for (int i = 0; i < 8; i++) {
      window.press(KeyEvent.VK_F6);
      names.add(focused());
    }
    assertThat(names)
        .contains(
            "boat-chooser",
            "menu",
            "place-trace",
            "profile",
            "deck",
            "zones",
            "symptoms",
            "search");
    window.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
    assertThat(focused()).isEqualTo("symptoms");
  }

  private String focused() {
    return window.ask(
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner == null ? "" : String.valueOf(owner.getName());
        });
  }

  @Test
  void everyControlHasANameForThoseWhoListen() {
    chooseKnot();
    for (int key :
        new int[] {
          KeyEvent.VK_1, KeyEvent.VK_2, KeyEvent.VK_3, KeyEvent.VK_4, KeyEvent.VK_5, KeyEvent.VK_6
        }) {
      window.press(key, KeyEvent.VK_CONTROL);
      for (Component component : window.showing()) {
        if (component.isFocusable()
            && component instanceof JComponent control
            && isControl(control)) {
          String name = window.ask(() -> control.getAccessibleContext().getAccessibleName());
          assertThat(name).as("%s %s", control.getName(), control.getClass()).isNotBlank();
        }
      }
    }
  }

  private static boolean isControl(JComponent component) {
    return component instanceof AbstractButton
        || component instanceof javax.swing.text.JTextComponent
        || component instanceof javax.swing.JComboBox
        || component instanceof javax.swing.JList
        || component instanceof javax.swing.JTree
        || component instanceof javax.swing.JTable
        || component instanceof BoatView;
  }

  @Test
  void placeAndBoatAndPageAreThereNextTime() throws IOException {
    chooseKnot();
    Memory memory = new Memory(new Forgetful());
    memory.remember("boat", "knot");
    memory.remember("place", "pages");
    memory.remember("page", "torch");
    memory.remember("window", "not a window");
    window.close();
    window = SmallWindow.open(Files.createTempDirectory(folder, "again"), memory);
    assertThat(window.ask(() -> desk().session().boat().orElseThrow().name())).isEqualTo("Knot");
    assertThat(page()).isEqualTo("torch");
    assertThat(window.find("page", JComponent.class).isShowing()).isTrue();
  }

  @Test
  void closingAsksAboutUnsavedChangesAndStaysWhenToldTo() {
    chooseKnot();
    JFrame frame = desk().window().frame();
    window.act(() -> desk().boats().form().set(Field.NAME, "Red Knot"));
    close(frame);
    press("Stay");
    assertThat(window.ask(frame::isDisplayable)).isTrue();
    close(frame);
    press("Drop changes");
    window.until("the window is closed", () -> !frame.isDisplayable());
    assertThat(window.ask(() -> desk().boats().form().isChanged())).isFalse();
  }

  private static void close(JFrame frame) {
    EventQueue.invokeLater(
        () -> frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING)));
  }

  /** Presses a button of the question that is asked. */
  private void press(String words) {
    JButton[] found = new JButton[1];
    window.until(
        "the question is asked",
        () -> {
          found[0] =
              window.robot().finder().findAll(button -> isShowing(button, words)).stream()
                  .map(JButton.class::cast)
                  .findFirst()
                  .orElse(null);
          return found[0] != null;
        });
    JDialog question = (JDialog) SwingUtilities.getWindowAncestor(found[0]);
    window.robot().focusAndWaitForFocusGain(found[0]);
    window.press(KeyEvent.VK_SPACE);
    window.until("the question is gone", () -> !question.isShowing());
  }

  private static boolean isShowing(Component component, String words) {
    return component instanceof JButton button
        && button.isShowing()
        && SwingUtilities.getWindowAncestor(button) instanceof JDialog
        && words.equals(button.getText());
  }

  @Test
  void aPageIsSavedAsPdf() {
    chooseKnot();
    window.act(() -> desk().navigator().openPage("replace-gasket"));
    window.until("the page is open", () -> page().equals("replace-gasket"));
    window.frame().button(new SaysSave()).click();
    window.until(
        "the file is there",
        () -> Files.isRegularFile(window.folders().root().resolve("replace-gasket-knot.pdf")));
  }

  private static final class SaysSave extends org.assertj.swing.core.GenericTypeMatcher<JButton> {
    SaysSave() {
      super(JButton.class, true);
    }

    @Override
    protected boolean isMatching(JButton button) {
      return button.getText().startsWith("Save as PDF");
    }
  }
}
