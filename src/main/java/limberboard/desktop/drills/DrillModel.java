package limberboard.desktop.drills;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import limberboard.boat.WorkCaution;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.trace.CautionReading;
import limberboard.drill.Counsel;
import limberboard.drill.Drill;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.mark.DrillMark;
import limberboard.trace.CautionsRead;

/**
 * The drill that is played, without Swing. Nothing of it touches a trace, a log or a case. It is
 * made, played and marked in the background. For the event thread only.
 */
final class DrillModel extends Observed implements CautionReading {
  private final Latest latest;
  private final Notices notices;
  private final Guard guard;
  private final VoteModel votes = new VoteModel();
  private Optional<DrillRun> run = Optional.empty();
  private Optional<String> student = Optional.empty();
  private Optional<StepOffer> open = Optional.empty();
  private Optional<DrillMark> mark = Optional.empty();
  private Optional<DrillMarking> marking = Optional.empty();
  private Runnable marked = () -> {};
  private String hint = "";
  private boolean letterRead;

  /** What came of a step. */
  private record Taken(DrillRun run, String hint) {}

  /**
   * A model without a drill.
   *
   * @param background makes, plays and marks
   * @param notices is told what cannot be done
   * @param guard is told of work that must not run on the event thread
   */
  DrillModel(Background background, Notices notices, Guard guard) {
    this.latest = new Latest(background);
    this.notices = notices;
    this.guard = guard;
    votes.onChange(this::tell);
  }

  /** Calls this each time that a drill has been marked. */
  void onMarked(Runnable action) {
    marked = action;
  }

  /**
   * Begins a drill in place of the one before.
   *
   * @param who the student, if one is named
   * @param made makes it, off the event thread; an {@link IllegalArgumentException} says why not
   */
  void begin(Optional<String> who, Supplier<Drill> made) {
    stop();
    latest.run(
        "Making the drill",
        () -> {
          guard.begins("making a drill");
          try {
            return new Begun(Optional.of(DrillRun.begin(made.get())), "");
          } catch (IllegalArgumentException e) {
            return new Begun(Optional.empty(), e.getMessage());
          }
        },
        begun ->
            begun
                .run()
                .ifPresentOrElse(
                    fresh -> begin(who, fresh),
                    () -> notices.warn("No drill was begun: " + begun.wrong() + ".")));
  }

  private record Begun(Optional<DrillRun> run, String wrong) {}

  private void begin(Optional<String> who, DrillRun fresh) {
    run = Optional.of(fresh);
    student = who;
    open = Optional.empty();
    mark = Optional.empty();
    hint = "";
    letterRead = false;
    votes.forget();
    tell();
  }

  /** How far it has come. */
  DrillStage stage() {
    if (run.isEmpty()) {
      return DrillStage.NONE;
    } else if (mark.isPresent()) {
      return DrillStage.MARKED;
    } else if (run.get().ended()) {
      return DrillStage.OVER;
    }
    return letterRead ? DrillStage.WORKING : DrillStage.LETTER;
  }

  /** The drill so far. */
  Optional<DrillRun> run() {
    return run;
  }

  /** Who plays it, if somebody is named. */
  Optional<String> student() {
    return student;
  }

  /** The votes of the class. */
  VoteModel votes() {
    return votes;
  }

  /** The letter has been read: steps may be taken. */
  void letterRead() {
    letterRead = true;
    tell();
  }

  /** The step that is looked at before it is done. */
  Optional<StepOffer> open() {
    return open;
  }

  /** Looks at a step, or at the list of all again. */
  void open(Optional<StepOffer> offer) {
    open = offer;
    tell();
  }

  /** The cautions that the symptom names first; they stand above every step. */
  List<WorkCaution> cautions() {
    return run.map(now -> new DrillCautions(now).first()).orElse(List.of());
  }

  /** The cautions of a step with those of the symptom. */
  List<WorkCaution> cautions(StepOffer offer) {
    return run.map(now -> new DrillCautions(now).of(offer)).orElse(List.of());
  }

  /** All that is to be told in full at a step. */
  List<WorkCaution> inFull() {
    return open.map(this::cautions)
        .orElseGet(() -> run.map(now -> now.drill().cautions()).orElse(List.of()));
  }

  /** The hint that was asked for last, until something else is done. */
  String hint() {
    return hint;
  }

  /** Takes a step; nothing happens where the drill is over. */
  void take(DrillStep step) {
    if (run.isEmpty() || run.get().ended()) {
      return;
    }
    take(List.of(step));
  }

  private void take(List<DrillStep> steps) {
    DrillRun from = run.orElseThrow();
    latest.run(
        "Taking the step",
        () -> {
          guard.begins("taking a step of a drill");
          DrillRun now = from;
          for (DrillStep step : steps) {
            now = now.take(step);
          }
          boolean hinted = steps.contains(new DrillStep.Hint());
          return new Taken(now, hinted ? new Counsel(now.drill().fault()).best(now).text() : "");
        },
        this::taken);
  }

  private void taken(Taken taken) {
    DrillRun now = taken.run();
    boolean worked = !(now.last().orElseThrow().step() instanceof DrillStep.Heed);
    run = Optional.of(now);
    if (worked) {
      hint = taken.hint();
      open = Optional.empty();
      votes.taken(now.done().size() - 1);
    }
    tell();
    if (now.ended()) {
      mark();
    }
  }

  @Override
  public CautionsRead read() {
    return run.map(now -> new DrillCautions(now).read()).orElse(CautionsRead.NONE);
  }

  @Override
  public void read(List<WorkCaution> heeded) {
    List<DrillStep> steps =
        heeded.stream()
            .map(WorkCaution::id)
            .distinct()
            .<DrillStep>map(DrillStep.Heed::new)
            .toList();
    if (!steps.isEmpty() && run.filter(now -> !now.ended()).isPresent()) {
      take(steps);
    }
  }

  @Override
  public void askAgain(WorkCaution caution) {
    // in a drill there is no emergency to be asked about
  }

  @Override
  public String readTitle() {
    return "I do as it says";
  }

  @Override
  public String readTip() {
    return "Takes the step of each of these cautions (F8)";
  }

  /** Marks the drill that is over. */
  void mark() {
    DrillRun played = run.filter(DrillRun::ended).orElseThrow();
    stop();
    DrillMarking now = new DrillMarking();
    marking = Optional.of(now);
    tell();
    latest.run(
        "Marking the drill",
        () -> {
          guard.begins("marking a drill");
          return now.mark(played);
        },
        this::marked,
        this::stop);
  }

  private void marked(Optional<DrillMark> found) {
    marking = Optional.empty();
    mark = found;
    tell();
    if (found.isPresent()) {
      marked.run();
    }
  }

  /** Drops the drill under way; nothing of it is kept. */
  void drop() {
    stop();
    run = Optional.empty();
    open = Optional.empty();
    mark = Optional.empty();
    tell();
  }

  /** Stops marking; it can be begun again. */
  void stop() {
    marking.ifPresent(DrillMarking::stop);
    marking = Optional.empty();
    latest.drop();
    tell();
  }

  /** Whether it is being marked. */
  boolean isMarking() {
    return marking.isPresent();
  }

  /** How many steps have been marked so far. */
  int markedSoFar() {
    return marking.map(DrillMarking::steps).orElse(0);
  }

  /** The marks, once there are some. */
  Optional<DrillMark> marks() {
    return mark;
  }
}
