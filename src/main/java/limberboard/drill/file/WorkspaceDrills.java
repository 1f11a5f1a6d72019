package limberboard.drill.file;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.MadeUpBoat;
import limberboard.drill.learn.ClassResults;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.NextDrill;
import limberboard.drill.mark.DrillMarker;
import limberboard.library.page.Cause;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;

/**
 * The drills that a workspace can give on a day, and those of files. What cannot be given is said
 * in the message of an {@link IllegalArgumentException}.
 *
 * @param workspace the workspace
 * @param today the day on which new drills are played
 */
public record WorkspaceDrills(Workspace workspace, LocalDate today) {
  private static final int TRIES = 100;

  /** The boats of the workspace that a symptom is for. */
  public List<Boat> boats(Page<Symptom> symptom) {
    return workspace.boats().stream()
        .filter(boat -> new Fitting(boat, today).fits(symptom.head().fits()))
        .toList();
  }

  /** The causes of a symptom that a boat can have; none if there is no such boat. */
  public List<Cause> causes(Page<Symptom> symptom, String boatId) {
    return workspace
        .boat(boatId)
        .map(boat -> new Fitting(boat, today))
        .map(
            fitting ->
                symptom.details().causes().stream()
                    .filter(cause -> fitting.fits(cause.fits()))
                    .toList())
        .orElse(List.of());
  }

  /** Everything that can be drilled on the boats there are, symptom by symptom. */
  public List<NextDrill.Can> can() {
    return symptoms()
        .flatMap(
            symptom ->
                boats(symptom).stream()
                    .map(
                        boat ->
                            new NextDrill.Can(
                                symptom.id(),
                                symptom.head().system().map(each -> each.word()).orElse(""),
                                boat.id())))
        .toList();
  }

  private Stream<Page<Symptom>> symptoms() {
    return workspace.library().all(Symptom.class).stream();
  }

  /**
   * A boat made up of a model's choices, the first from the seed on that a symptom is for.
   *
   * @throws IllegalArgumentException when none is
   */
  public Boat madeUp(Page<Symptom> symptom, Page<Model> model, long seed) {
    for (long tried = seed; tried < seed + TRIES; tried++) {
      Boat boat = new MadeUpBoat(model, tried, today.getYear()).boat();
      if (new Fitting(boat, today).fits(symptom.head().fits())) {
        return boat;
      }
    }
    throw new IllegalArgumentException(
        symptom.id() + " is for no " + model.title() + " that can be made up");
  }

  /**
   * The drill of an order.
   *
   * @throws IllegalArgumentException when there is no such symptom or boat, or it is not for her
   */
  public Drill drill(DrillOrder order) {
    Page<Symptom> page =
        workspace
            .library()
            .symptom(order.symptom())
            .orElseThrow(() -> absent("symptom", order.symptom()));
    Boat boat = workspace.boat(order.boat()).orElseThrow(() -> absent("boat", order.boat()));
    Fitting fitting = new Fitting(boat, order.on());
    Fit fit = fitting.judge(page.head().fits());
    if (!fit.fits()) {
      throw new IllegalArgumentException(
          page.id() + " is not for " + boat.name() + ": " + fit.reason());
    }
    return Drill.of(order, Fault.of(page, fitting, workspace.library(), workspace.cases()));
  }

  private static IllegalArgumentException absent(String what, String id) {
    return new IllegalArgumentException("there is no " + what + " \"" + id + "\" any more");
  }

  /**
   * The drill of a file, on the figures it was made with.
   *
   * @throws IllegalArgumentException when it cannot be given, or the figures are others
   */
  public Drill drill(KeptDrill kept) {
    Drill drill = drill(kept.order());
    if (!drill.stamp().equals(kept.stamp())) {
      throw new IllegalArgumentException(
          "it was made with other figures of \""
              + kept.order().symptom()
              + "\" than those here (stamp "
              + kept.stamp()
              + ", here "
              + drill.stamp()
              + "), so it cannot be marked rightly; mark it where it was made, or with the library"
              + " and cases of that day");
    }
    return drill;
  }

  /**
   * What was handed in, marked.
   *
   * @param begun is told before each step that is marked, and may end the marking by throwing
   * @throws IllegalArgumentException when it cannot be marked, or was not played to its end
   */
  public ClassResults.Played played(KeptDrill kept, IntConsumer begun) {
    DrillRun run = DrillRun.of(drill(kept), kept.steps());
    if (!run.ended()) {
      throw new IllegalArgumentException("the drill was not played to its end");
    }
    DrillMarker marker = new DrillMarker(new Counsel(run.drill().fault()));
    return new ClassResults.Played(
        kept.student().orElse(""),
        kept.key().orElse(""),
        DrillRecord.of(marker.mark(run, begun), kept.order().on()),
        kept.order().seed(),
        kept.steps().stream().map(DrillStep::text).toList());
  }

  /** A drill that was played, as a file keeps it. */
  public static KeptDrill kept(DrillRun run, Optional<String> student, Optional<String> key) {
    return new KeptDrill(
        run.drill().order(),
        run.drill().stamp(),
        student,
        key,
        run.done().stream().map(each -> each.step()).toList());
  }
}
