package limberboard.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.text.JTextComponent;
import limberboard.desktop.trace.Aspect;
import limberboard.desktop.trace.Stage;
import limberboard.desktop.trace.TraceModel;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;
import limberboard.trace.NextStep;

/** The states of the window that pictures are made of. */
enum Scene {
  /** A place on the boat is chosen, and a symptom is to be. */
  TRACE_BEFORE(
      desk -> {
        desk.trace().where().choose(Optional.of("forward-cabin"));
        desk.go("trace");
      }),
  /** It is asked whether there is an emergency. */
  TRACE_CAUTIONS(Scene::begin),
  /** A check has been answered. */
  TRACE_DURING(desk -> trace(desk, 1)),
  /** The cause is found. */
  TRACE_AFTER(desk -> trace(desk, 20)),
  /** Why a check comes next. */
  TRACE_WHY(
      desk -> {
        trace(desk, 1);
        desk.aspects().look(Aspect.WHY);
      }),
  /** The whole tree, after a check has been answered. */
  TRACE_TREE(
      desk -> {
        trace(desk, 1);
        desk.aspects().look(Aspect.TREE);
      }),
  /** A procedure is read. */
  PAGES(
      desk -> {
        desk.reading().open("rebed-deck-fitting");
        desk.go("pages");
      }),
  /** What is due. */
  UPKEEP_DUE(desk -> desk.go("upkeep")),
  /** Work is being marked done. */
  UPKEEP_DONE(
      desk -> {
        desk.go("upkeep");
        press(desk.upkeepPlace().component(), "mark-done");
      }),
  /** The work of the coming seasons. */
  UPKEEP_TIME_LINE(desk -> upkeep(desk, "time-line")),
  /** The boat's log. */
  UPKEEP_LOG(desk -> upkeep(desk, "log")),
  /** The list for fitting out. */
  UPKEEP_LIST(desk -> upkeep(desk, "list")),
  /** The plan for sixteen hours. */
  UPKEEP_PLAN(
      desk -> {
        upkeep(desk, "plan");
        type(desk.upkeepPlace().component(), "plan-hours", "16");
        press(desk.upkeepPlace().component(), "plan-it");
      }),
  /** What to get for a season. */
  UPKEEP_SHOPPING(desk -> upkeep(desk, "shopping")),
  /** Every rope of the boat. */
  UPKEEP_RIGGING(desk -> upkeep(desk, "rigging")),
  /** A sum with the boat's numbers. */
  UPKEEP_WORKINGS(desk -> upkeep(desk, "workings")),
  /** A letter is read, with what was recognised in it and the draft of its answer. */
  LETTERS(Scene::letter),
  /** An urgent letter is read. */
  LETTERS_URGENT(desk -> letter(desk, "whiff-of-gas-greenshank.eml")),
  /**
   * A piece of a draft that was edited, and whose grounds changed when an answer was taken back.
   */
  LETTERS_ANSWER(Scene::answer),
  /** What recorded cases add up to. */
  LETTERS_STATISTICS(
      desk -> {
        desk.go("letters");
        desk.lettersPlace().showFigures();
      }),
  /** What to write next. */
  LETTERS_NEXT(
      desk -> {
        desk.go("letters");
        desk.lettersPlace().showNext();
      }),
  /** A drill is chosen. */
  DRILLS_CHOOSE(DrillScenes::choose),
  /** A ready course is opened. */
  DRILLS_COURSE(DrillScenes::course),
  /** Everything that can be done in a drill. */
  DRILLS_WORK(desk -> DrillScenes.work(desk, 2)),
  /** A step of a drill with its cautions, before it is done. */
  DRILLS_STEP(DrillScenes::step),
  /** A drill that is over is gone through. */
  DRILLS_LOOK_BACK(DrillScenes::lookBack),
  /** The results of a class. */
  DRILLS_CLASS(DrillScenes::together),
  /** The class votes, in projector size. */
  DRILLS_PROJECTOR(DrillScenes::projector),
  /** A drill is gone through, in projector size. */
  DRILLS_PROJECTOR_LOOK_BACK(DrillScenes::projectorLookBack),
  /** A symptom's causes and checks as a table, with the tree. */
  SYMPTOM_EDITOR_TABLE(desk -> WriteScenes.table(desk, false)),
  /** Each cause of a symptom is tried. */
  SYMPTOM_EDITOR_TRY(desk -> WriteScenes.table(desk, true)),
  /** Everything found in the workspace. */
  FINDINGS(WorkspaceScenes::findings),
  /** The quick notes that wait. */
  NOTES(WorkspaceScenes::notes),
  /** What a version changed in a page. */
  HISTORY_CHANGED(WorkspaceScenes::changed),
  /** A page as it stood in a version. */
  HISTORY_THEN(WorkspaceScenes::then),
  /** Both copies changed the same parts, and one is looked at. */
  MERGE_SETTLE(WorkspaceScenes::settle),
  /** What came, once all is chosen. */
  MERGE_CAME(WorkspaceScenes::came),
  /** A boat's form. */
  BOATS(desk -> desk.go("boats")),
  /** A page is chosen to be written. */
  WRITE_PAGES(desk -> desk.go("write")),
  /** A page is written, with something wrong in it, beside the page as it reads. */
  WRITE(WriteScenes::write),
  /** A page is written, and the proofreader finds something in what is typed. */
  WRITE_PROOFREAD(WriteScenes::proofread),
  /** The header of the page as a form. */
  WRITE_HEADER(WriteScenes::header),
  /** A new page. */
  WRITE_NEW(WriteScenes::begin),
  /** A page is to be deleted that others name. */
  WRITE_DELETE(WriteScenes::delete),
  /** Two versions of a page. */
  WRITE_BOTH(WriteScenes::both);

  private static final String BOAT = "dunlin";
  private static final String SYMPTOM = "water-in-forward-cabin";
  private static final String LETTER = "forward-and-flat-dunlin.eml";
  private static final String PIECE = "piece-water-in-forward-cabin/likely";
  private static final String CAUSE = "bowsprit-seal";
  private final Consumer<WindowAssembly> state;

  Scene(Consumer<WindowAssembly> state) {
    this.state = state;
  }

  /** Brings the window into this state. */
  void set(WindowAssembly desk) {
    state.accept(desk);
  }

  private static void upkeep(WindowAssembly desk, String aspect) {
    desk.go("upkeep");
    desk.upkeepPlace().look(aspect);
  }

  private static void letter(WindowAssembly desk) {
    letter(desk, LETTER);
  }

  private static void answer(WindowAssembly desk) {
    letter(desk);
    Container place = desk.lettersPlace().component();
    type(place, PIECE, "We think that the rain comes in where the mast stands.");
    press(place, "letter-take-back-hose-mast-foot");
    desk.lettersPlace().showAnswer();
    desk.window().frame().validate();
    show(place, PIECE);
  }

  private static void letter(WindowAssembly desk, String name) {
    desk.go("letters");
    desk.lettersPlace().open(name);
  }

  private static void begin(WindowAssembly desk) {
    desk.go("trace");
    desk.trace().start(SYMPTOM);
  }

  /** Begins tracing, and answers so many times. */
  private static void trace(WindowAssembly desk, int answers) {
    begin(desk);
    desk.trace().cautions().stream()
        .filter(caution -> caution.question().isPresent())
        .forEach(caution -> desk.trace().answerEmergency(caution, false));
    desk.trace().cautionsRead();
    answer(desk.trace(), answers);
  }

  /** The name of the picture's file, without theme and ending. */
  String fileName() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The boat of the pictures. */
  static String boat() {
    return BOAT;
  }

  static void press(Container within, String button) {
    for (Component each : within.getComponents()) {
      if (button.equals(each.getName()) && each instanceof AbstractButton found) {
        found.doClick();
      } else if (each instanceof Container nested) {
        press(nested, button);
      }
    }
  }

  static void type(Container within, String field, String text) {
    for (Component each : within.getComponents()) {
      if (field.equals(each.getName()) && each instanceof JTextComponent found) {
        found.setText(text);
      } else if (each instanceof Container nested) {
        type(nested, field, text);
      }
    }
  }

  private static void show(Container within, String name) {
    for (Component each : within.getComponents()) {
      if (name.equals(each.getName()) && each.getParent() instanceof JComponent around) {
        around.scrollRectToVisible(new Rectangle(0, 0, around.getWidth(), around.getHeight()));
      } else if (each instanceof Container nested) {
        show(nested, name);
      }
    }
  }

  /** Answers as the bowsprit's seal would make one answer, so many times or until it is found. */
  private static void answer(TraceModel trace, int most) {
    for (int i = 0; i < most && trace.stage() == Stage.CHECK; i++) {
      if (trace.step().orElseThrow() instanceof NextStep.DoCheck step) {
        Check check = step.check().check();
        trace.answer(check.id(), likeliest(check));
      }
    }
  }

  private static String likeliest(Check check) {
    return check.answers().stream()
        .max(Comparator.comparingDouble(answer -> chance(check, answer)))
        .orElseThrow();
  }

  private static double chance(Check check, String answer) {
    Map<String, Likelihood> finds = check.finds().getOrDefault(answer, Map.of());
    Likelihood found = finds.getOrDefault(CAUSE, finds.get(Check.OTHERS));
    return found == null ? 0.5 / check.answers().size() : found.value();
  }
}
