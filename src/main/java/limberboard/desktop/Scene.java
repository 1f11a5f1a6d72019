package limberboard.desktop;

import java.awt.Component;
import java.awt.Container;
import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import limberboard.desktop.trace.Aspect;
import limberboard.desktop.trace.Stage;
import limberboard.desktop.trace.TraceModel;
import limberboard.library.page.Check;
import limberboard.library.value.Likelihood;
import limberboard.trace.NextStep;

/** The states of the window that pictures are made of. */
enum Scene {
  /** A place on the boat is chosen, and a symptom is to be. */
  TRACE_BEFORE {
    @Override
    void set(WindowAssembly desk) {
      desk.trace().where().choose(Optional.of("forward-cabin"));
      desk.window().go(desk.place("trace"));
    }
  },
  /** A check has been answered. */
  TRACE_DURING {
    @Override
    void set(WindowAssembly desk) {
      desk.window().go(desk.place("trace"));
      begin(desk.trace());
      answer(desk.trace(), 1);
    }
  },
  /** The cause is found. */
  TRACE_AFTER {
    @Override
    void set(WindowAssembly desk) {
      desk.window().go(desk.place("trace"));
      begin(desk.trace());
      answer(desk.trace(), 20);
    }
  },
  /** Why a check comes next. */
  TRACE_WHY {
    @Override
    void set(WindowAssembly desk) {
      TRACE_DURING.set(desk);
      desk.aspects().look(Aspect.WHY);
    }
  },
  /** The whole tree, after a check has been answered. */
  TRACE_TREE {
    @Override
    void set(WindowAssembly desk) {
      TRACE_DURING.set(desk);
      desk.aspects().look(Aspect.TREE);
    }
  },
  /** A procedure is read. */
  PAGES {
    @Override
    void set(WindowAssembly desk) {
      desk.reading().open("rebed-deck-fitting");
      desk.window().go(desk.place("pages"));
    }
  },
  /** What is due. */
  UPKEEP_DUE {
    @Override
    void set(WindowAssembly desk) {
      desk.window().go(desk.place("upkeep"));
    }
  },
  /** Work is being marked done. */
  UPKEEP_DONE {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      press(desk.upkeepPlace().component(), "mark-done");
    }
  },
  /** The work of the coming seasons. */
  UPKEEP_TIME_LINE {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("time-line");
    }
  },
  /** The boat's log. */
  UPKEEP_LOG {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("log");
    }
  },
  /** The list for fitting out. */
  UPKEEP_LIST {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("list");
    }
  },
  /** What to get for a season. */
  UPKEEP_SHOPPING {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("shopping");
    }
  },
  /** Every rope of the boat. */
  UPKEEP_RIGGING {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("rigging");
    }
  },
  /** A sum with the boat's numbers. */
  UPKEEP_WORKINGS {
    @Override
    void set(WindowAssembly desk) {
      UPKEEP_DUE.set(desk);
      desk.upkeepPlace().look("workings");
    }
  },
  /** A boat's form. */
  BOATS {
    @Override
    void set(WindowAssembly desk) {
      desk.window().go(desk.place("boats"));
    }
  };

  private static final String BOAT = "dunlin";
  private static final String SYMPTOM = "water-in-forward-cabin";
  private static final String CAUSE = "bowsprit-seal";

  /** Brings the window into this state. */
  abstract void set(WindowAssembly desk);

  /** The name of the picture's file, without theme and ending. */
  String fileName() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The boat of the pictures. */
  static String boat() {
    return BOAT;
  }

  private static void press(Container within, String button) {
    for (Component each : within.getComponents()) {
      if (button.equals(each.getName()) && each instanceof AbstractButton found) {
        found.doClick();
      } else if (each instanceof Container nested) {
        press(nested, button);
      }
    }
  }

  private static void begin(TraceModel trace) {
    trace.start(SYMPTOM);
    trace.cautionsRead();
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
