package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.JList;
import limberboard.desktop.drills.DrillsPlace;
import limberboard.desktop.parts.Wrapped;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.file.StudentFiles;
import limberboard.drill.file.WorkspaceDrills;
import org.junit.jupiter.api.Test;

/** The Drills place through real keyboard events alone. */
class DrillsWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int ALT = KeyEvent.VK_ALT;
  private static final String SYMPTOM = "wet-locker";

  private DrillsPlace place() {
    return desk().drillsPlace();
  }

  private Optional<DrillRun> run() {
    return window.ask(() -> place().run());
  }

  private int steps() {
    return run().map(run -> run.done().size()).orElse(0);
  }

  private String focused() {
    return window.ask(
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner == null ? "" : String.valueOf(owner.getName());
        });
  }

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> focusIs(name));
  }

  private static boolean focusIs(String name) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private List<String> texts() {
    return window.showing().stream()
        .filter(Wrapped.class::isInstance)
        .map(each -> ((Wrapped) each).getText())
        .toList();
  }

  private boolean says(String what) {
    return texts().stream().anyMatch(text -> text.contains(what));
  }

  private void untilSays(String what) {
    window.until("it says " + what, () -> says(what));
  }

  /** Ctrl+5, and the form filled in, from the field of the student on. */
  private void begin(String student, String seed, String hints) {
    window.act(() -> place().choose(SYMPTOM, "knot"));
    window.press(KeyEvent.VK_5, CTRL);
    untilFocused("drill-student");
    window.type(student);
    fill("drill-seed", seed);
    fill("drill-hints", hints);
    window.press(KeyEvent.VK_ENTER);
    window.until("the letter is there", () -> window.shows("drill-letter-read"));
    untilFocused("drill-letter");
  }

  /** Tab until a field has the focus, and what is in it replaced. */
  private void fill(String field, String text) {
    for (int i = 0; i < 8 && !focused().equals(field); i++) {
      window.press(KeyEvent.VK_TAB);
    }
    assertThat(focused()).isEqualTo(field);
    window.press(KeyEvent.VK_A, CTRL);
    window.type(text);
  }

  private void toTheFirstStep() {
    window.press(KeyEvent.VK_DOWN);
    untilFocused("drill-letter-read");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-steps");
  }

  /** Moves in the list of steps to the card with this title. */
  private void select(String title) {
    JList<?> list = window.find("drill-steps", JList.class);
    window.press(KeyEvent.VK_HOME);
    for (int i = 0; i < 40 && !selectedSays(list, title); i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    assertThat(selectedSays(list, title)).as("the step %s is there", title).isTrue();
  }

  private boolean selectedSays(JList<?> list, String title) {
    return window.ask(
        () -> {
          Object value = list.getSelectedValue();
          return value != null && value.toString().contains("title=" + title);
        });
  }

  private void doIt(String title) {
    select(title);
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-step");
    int before = steps();
    window.press(KeyEvent.VK_DOWN);
    untilFocused("drill-do");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is done", () -> steps(before));
    untilFocused("drill-steps");
  }

  private boolean steps(int before) {
    return place().run().map(run -> run.done().size()).orElse(0) > before;
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(window.folders().root())) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = window.folders().root().relativize(file).toString().replace('\\', '/');
        if (!name.startsWith("index/") && !name.startsWith("drills/")) {
          files.put(name, Files.readString(file));
        }
      }
    }
    return files;
  }

  @Test
  void aDrillIsPlayedToItsEndByKeyboardAloneAndGoneThroughAndKeptForTheStudent()
      throws IOException {
    Map<String, String> before = files();
    begin("Ada", "7", "1");
    assertThat(run().orElseThrow().drill().order())
        .isEqualTo(new DrillOrder(SYMPTOM, "knot", window.ask(desk().session()::today), 7, 1));
    assertThat(texts()).anyMatch(text -> text.contains("Knot"));
    toTheFirstStep();
    assertThat(texts()).noneMatch(text -> text.contains("%"));
    window.press(KeyEvent.VK_F8);
    window.until("the caution's step is taken", () -> steps(0));
    doIt("When does the water come?");
    doIt("Does a strip of paper hold under the lid?");
    select("The gasket no longer seals");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-step");
    window.press(KeyEvent.VK_DOWN);
    untilFocused("drill-sure");
    window.press(KeyEvent.VK_ENTER);
    assertThat(texts()).anyMatch(text -> text.startsWith("Say how sure you are"));
    window.type("80");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is done", () -> mends() == 1);
    if (!run().orElseThrow().ended()) {
      select("Hand it to the yard");
      window.press(KeyEvent.VK_ENTER);
      untilFocused("drill-step");
      for (int i = 0; i < 5 && !focused().equals("drill-do"); i++) {
        window.press(KeyEvent.VK_TAB);
      }
      window.press(KeyEvent.VK_ENTER);
    }
    untilSays("It was: ");
    untilFocused("drill-marked-steps");
    assertThat(texts()).anyMatch(text -> text.contains("on average"));
    for (int i = 0; i < steps(); i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    assertThat(texts()).contains("What was known before it", "Best step", "What it cost");
    StudentFiles students = new StudentFiles(window.folders());
    window.until("it is kept", () -> students.read("Ada").student().isPresent());
    var progress = students.read("Ada").student().orElseThrow().progress();
    assertThat(progress.drills()).hasSize(1);
    assertThat(progress.drills().get(0).symptom()).isEqualTo(SYMPTOM);
    window.press(KeyEvent.VK_S, CTRL);
    Path result = window.folders().root().resolve("Ada-wet-locker-7.yaml");
    window.until("the result is written", () -> Files.exists(result));
    KeptDrill kept = new DrillFiles().read(result).drill().orElseThrow();
    assertThat(kept.steps()).hasSize(steps());
    assertThat(kept.student()).contains("Ada");
    Files.delete(result);
    assertThat(files()).as("no page, log, case or boat is touched").isEqualTo(before);
    assertThat(window.ask(() -> desk().trace().trace())).isEmpty();
    assertThat(window.ask(() -> desk().trace().keptTraces())).isEmpty();
  }

  private int mends() {
    return (int)
        place().run().stream()
            .flatMap(run -> run.done().stream())
            .filter(each -> each.step() instanceof DrillStep.Mend)
            .count();
  }

  @Test
  void aHintIsThereOnlyWhenItIsAllowedAndNamesTheBestStep() {
    begin("", "3", "0");
    toTheFirstStep();
    JList<?> list = window.find("drill-steps", JList.class);
    assertThat(window.ask(() -> list.getModel().getSize())).isPositive();
    assertThat(titles(list)).noneMatch(title -> title.contains("Ask for a hint"));
    window.press(KeyEvent.VK_C, ALT);
    untilFocused("drill-student");
    fill("drill-hints", "2");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-letter");
    toTheFirstStep();
    doIt("Ask for a hint");
    untilSays("Best now: ");
  }

  private List<String> titles(JList<?> list) {
    return window.ask(
        () -> {
          List<String> titles = new ArrayList<>();
          for (int i = 0; i < list.getModel().getSize(); i++) {
            titles.add(list.getModel().getElementAt(i).toString());
          }
          return titles;
        });
  }

  @Test
  void theClassVotesByNumberKeysAndATieIsSaid() {
    begin("", "5", "0");
    toTheFirstStep();
    window.press(KeyEvent.VK_V, ALT);
    untilFocused("drill-steps");
    select("When does the water come?");
    window.press(KeyEvent.VK_1);
    window.press(KeyEvent.VK_2);
    select("Does the hose turn on its spigot?");
    window.press(KeyEvent.VK_1);
    window.press(KeyEvent.VK_2);
    untilSays("It is a tie: choose one");
    select("Does a strip of paper hold under the lid?");
    window.press(KeyEvent.VK_ENTER);
    untilSays("It is a tie. Choose one of these");
    select("Does the hose turn on its spigot?");
    window.press(KeyEvent.VK_BACK_SPACE);
    untilSays("12 hands: When does the water come?\n1 hand: Does the hose turn");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-step");
    assertThat(texts()).contains("When does the water come?");
    window.press(KeyEvent.VK_DOWN);
    untilFocused("drill-do");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-steps");
    doIt("Give up", 1);
    untilFocused("drill-marked-steps");
    window.press(KeyEvent.VK_DOWN);
    untilSays("12 hands: When does the water come?");
    assertThat(texts()).anyMatch(text -> text.contains("1 hand: Does the hose turn"));
  }

  private void doIt(String title, int before) {
    select(title);
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-step");
    window.press(KeyEvent.VK_DOWN);
    untilFocused("drill-do");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is done", () -> steps(before));
  }

  @Test
  void projectorSizeIsOneKeyAndEndsWhereThePlaceIsLeft() {
    begin("", "5", "0");
    window.press(KeyEvent.VK_F9);
    window.until("the text is large", () -> desk().settings().textPercent() == 200);
    window.press(KeyEvent.VK_1, CTRL);
    window.until("it is as before", () -> desk().settings().textPercent() == 100);
    window.press(KeyEvent.VK_5, CTRL);
    window.until("it is large again", () -> desk().settings().textPercent() == 200);
    window.press(KeyEvent.VK_F9);
    window.until("it is as usual", () -> desk().settings().textPercent() == 100);
  }

  @Test
  void aCourseIsGoneThroughInOrderAndWhatCannotBePlayedIsSaid() throws IOException {
    Path file = window.folders().root().resolveSibling("day.yaml");
    String on = window.ask(() -> desk().session().today().toString());
    DrillRun made =
        DrillRun.begin(
            window.ask(
                () ->
                    new WorkspaceDrills(desk().session().workspace(), desk().session().today())
                        .drill(new DrillOrder(SYMPTOM, "knot", desk().session().today(), 4, 0))));
    Files.writeString(
        file,
        "title: One day\ndrills:\n- symptom: wet-locker\n  boat: knot\n  on: '"
            + on
            + "'\n  seed: '4'\n  stamp: "
            + made.drill().stamp()
            + "\n- symptom: no-such\n  boat: knot\n  on: '"
            + on
            + "'\n  seed: '5'\n  stamp: abc\n");
    window.courseToOpen(file);
    window.press(KeyEvent.VK_5, CTRL);
    untilFocused("drill-student");
    window.focus("drill-course");
    window.press(KeyEvent.VK_ENTER);
    untilSays("One day");
    window.press(KeyEvent.VK_F6);
    window.focus("drill-side");
    JList<?> side = window.find("drill-side", JList.class);
    assertThat(titles(side)).hasSize(2);
    assertThat(titles(side).get(1)).contains("there is no symptom \"no-such\" any more");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("drill-letter");
    assertThat(run().orElseThrow().drill().order().seed()).isEqualTo(4);
  }

  @Test
  void resultsOfAClassAreGatheredAndWhatIsWrongIsSaidWithFileAndLine() throws IOException {
    Path folder = Files.createDirectories(window.folders().root().resolveSibling("handed-in"));
    handIn(folder, "Ada", "k1", 1);
    handIn(folder, "Ada", "k2", 2);
    handIn(folder, "Ben", "k3", 3);
    Files.writeString(folder.resolve("spoilt.yaml"), "symptom: wet-locker\nboat: knot\nseed: x\n");
    String good = Files.readString(folder.resolve("Ben3.yaml"));
    Files.writeString(
        folder.resolve("other.yaml"), good.replaceAll("stamp: .*", "stamp: '0123456789ab'"));
    window.resultsToGather(folder);
    window.press(KeyEvent.VK_5, CTRL);
    untilFocused("drill-student");
    window.press(KeyEvent.VK_A, ALT);
    window.until(
        "the button is there", () -> focusIs("class-gather") || window.shows("class-gather"));
    window.focus("class-gather");
    window.press(KeyEvent.VK_ENTER);
    untilSays("3 students, 3 drills");
    assertThat(texts())
        .anyMatch(text -> text.contains("Several students are called Ada"))
        .anyMatch(text -> text.contains("spoilt.yaml"))
        .anyMatch(text -> text.contains("other.yaml: it was made with other figures"));
    assertThat(
            window.ask(
                () ->
                    window
                        .find("class-picture", Component.class)
                        .getAccessibleContext()
                        .getAccessibleName()))
        .contains("Ada (k1): ")
        .contains("Ben: ");
    window.focus("class-by-mistake");
    window.press(KeyEvent.VK_ENTER);
    assertThat(Files.readString(folder.resolve("spoilt.yaml"))).endsWith("seed: x\n");
  }

  @Test
  void theNextDrillIsProposedWithItsReasonAndTwoStudentsOfOneFileAreToldApart() throws IOException {
    window.press(KeyEvent.VK_5, CTRL);
    untilFocused("drill-student");
    window.type("Ada");
    window.focus("drill-next");
    window.press(KeyEvent.VK_ENTER);
    untilSays("It is new, and most is to be learnt there");
    Path file = new StudentFiles(window.folders()).file("Ada");
    Files.createDirectories(file.getParent());
    Files.writeString(file, "student: ADA\nkey: k1\ndrills:\n");
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "it is said",
        () -> notice().contains("belongs to \u201cADA\u201d, not to \u201cAda\u201d"));
    Files.writeString(file, "student: [\n");
    window.press(KeyEvent.VK_ENTER);
    window.until("the file is named", () -> notice().contains("drills/students/ada.yaml"));
    assertThat(Files.readString(file)).isEqualTo("student: [\n");
  }

  private String notice() {
    return desk().notices().current().map(each -> each.text()).orElse("");
  }

  @Test
  void inTheSmallestWindowADrillIsPlayedByKeyboardToo() {
    window.act(() -> desk().window().frame().setSize(1024, 700));
    begin("", "9", "0");
    toTheFirstStep();
    window.press(KeyEvent.VK_F7);
    untilFocused("whole-cautions");
    window.press(KeyEvent.VK_F7);
    untilFocused("drill-steps");
    doIt("Does a strip of paper hold under the lid?");
    doIt("Give up", 1);
    untilFocused("drill-marked-steps");
    window.press(KeyEvent.VK_END);
    assertThat(texts()).contains("Given up").anyMatch(text -> text.startsWith("It was: "));
  }

  private void handIn(Path folder, String student, String key, long seed) throws IOException {
    WorkspaceDrills drills =
        window.ask(
            () -> new WorkspaceDrills(desk().session().workspace(), desk().session().today()));
    DrillRun run =
        DrillRun.of(
            drills.drill(new DrillOrder(SYMPTOM, "knot", drills.today(), seed, 0)),
            List.of(new DrillStep.Ask("clip"), new DrillStep.GiveUp()));
    Files.writeString(
        folder.resolve(student + seed + ".yaml"),
        new DrillFiles().text(WorkspaceDrills.kept(run, Optional.of(student), Optional.of(key))));
  }
}
