package limberboard.desktop;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.desktop.drills.DrillsPlace;
import limberboard.desktop.parts.CardList;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.WorkspaceDrills;

/** The states of the Drills place that pictures are made of, with an invented class. */
final class DrillScenes {
  private static final List<String> CLASS = List.of("Ailsa", "Bram", "Coll", "Dena");
  private static final List<String> SYMPTOMS =
      List.of("water-in-forward-cabin", "clutch-slips", "toilet-smells", "battery-goes-flat");

  private DrillScenes() {}

  private static DrillsPlace place(WindowAssembly desk) {
    desk.go("drills");
    DrillsPlace place = desk.drillsPlace();
    place.project(false);
    place.drop();
    Scene.type(place.component(), "drill-student", "Ailsa");
    Scene.type(place.component(), "drill-seed", "7");
    Scene.type(place.component(), "drill-hints", "1");
    place.choose("water-in-forward-cabin", "dunlin");
    return place;
  }

  static void choose(WindowAssembly desk) {
    place(desk).look("choose");
  }

  /** The last of the ready courses is opened. */
  static void course(WindowAssembly desk) {
    DrillsPlace place = place(desk);
    place.look("choose");
    openLast(place.component());
  }

  private static void openLast(Container within) {
    for (Component each : within.getComponents()) {
      if (each instanceof CardList<?> list && "drill-side".equals(each.getName())) {
        list.setSelectedIndex(list.entries().size() - 1);
        list.chooseSelected();
      } else if (each instanceof Container nested) {
        openLast(nested);
      }
    }
  }

  /** A drill after some checks, the dearest mistake of which is to ask the later ones first. */
  static void work(WindowAssembly desk, int checks) {
    DrillsPlace place = place(desk);
    Scene.press(place.component(), "drill-begin");
    Scene.press(place.component(), "drill-letter-read");
    List<String> ids = checks(desk);
    for (int i = 0; i < checks; i++) {
      place.take(new DrillStep.Ask(ids.get(i)));
    }
  }

  private static List<String> checks(WindowAssembly desk) {
    return desk
        .session()
        .library()
        .symptom(SYMPTOMS.get(0))
        .orElseThrow()
        .details()
        .checks()
        .stream()
        .map(each -> each.id())
        .toList();
  }

  static void step(WindowAssembly desk) {
    work(desk, 2);
    desk.drillsPlace().open("stem-fitting");
  }

  static void lookBack(WindowAssembly desk) {
    work(desk, 3);
    desk.drillsPlace().take(new DrillStep.Mend("bowsprit-seal", 60));
    desk.drillsPlace()
        .take(new DrillStep.HandOver(Optional.of(new DrillStep.Named("stem-fitting", 50))));
  }

  static void projector(WindowAssembly desk) {
    work(desk, 1);
    List<String> ids = checks(desk);
    desk.drillsPlace().vote(ids.get(1), 7);
    desk.drillsPlace().vote(ids.get(3), 3);
    desk.drillsPlace().project(true);
  }

  static void projectorLookBack(WindowAssembly desk) {
    lookBack(desk);
    desk.drillsPlace().project(true);
  }

  static void together(WindowAssembly desk) {
    place(desk).look("class");
    try {
      Path folder = Files.createTempDirectory("limberboard-class");
      handIn(desk.session().workspace(), desk.session().today(), folder);
      desk.drillsPlace().gather(folder);
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Each student asks a little more at random than the one before. */
  private static void handIn(Workspace workspace, LocalDate today, Path folder) throws IOException {
    WorkspaceDrills drills = new WorkspaceDrills(workspace, today);
    for (int student = 0; student < CLASS.size(); student++) {
      for (int i = 0; i < SYMPTOMS.size() - student % 2; i++) {
        Drill drill = drills.drill(new DrillOrder(SYMPTOMS.get(i), "dunlin", today, 7 + i, 0));
        DrillRun run = played(drill, (student * 3 + i) % 5);
        Files.writeString(
            folder.resolve(CLASS.get(student) + "-" + i + DrillFiles.ENDING),
            new DrillFiles()
                .text(
                    WorkspaceDrills.kept(run, Optional.of(CLASS.get(student)), Optional.empty())));
      }
    }
  }

  /** Asks the last checks of the page first, so many of them, then plays as is best. */
  private static DrillRun played(Drill drill, int badly) {
    DrillRun run = DrillRun.begin(drill);
    List<DrillStep> steps = new ArrayList<>();
    int checks = drill.fault().checks().size();
    for (int i = 1; i <= Math.min(badly, checks); i++) {
      steps.add(new DrillStep.Ask(drill.fault().checks().get(checks - i).id()));
    }
    for (DrillStep each : steps) {
      run = run.take(each);
    }
    Counsel counsel = new Counsel(drill.fault());
    while (!run.ended()) {
      run = run.take(counsel.bestStep(run));
    }
    return run;
  }
}
