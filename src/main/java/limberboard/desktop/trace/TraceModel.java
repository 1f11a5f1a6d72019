package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.library.Caution;
import limberboard.library.Page;
import limberboard.library.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/** What the trace place shows and does, without Swing. For the event thread only. */
public final class TraceModel {
  private final Session session;
  private final Latest latest;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Tracings tracings = new Tracings();
  private final Whereabouts where;
  private Workspace seen;
  private boolean working;

  /**
   * A model without a trace.
   *
   * @param session tells library and boat
   * @param background computes chances and next steps
   */
  public TraceModel(Session session, Background background) {
    this.session = session;
    this.latest = new Latest(background);
    this.where = new Whereabouts(session, this::tell);
    this.seen = session.workspace();
    session.onChange(this::sessionChanged);
  }

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** How far things have come for the chosen boat. */
  public Stage stage() {
    if (!session.isRead()) {
      return Stage.READING;
    }
    if (session.boat().isEmpty()) {
      return Stage.NO_BOAT;
    }
    return tracing().map(Tracing::stage).orElse(Stage.CHOOSING);
  }

  /** The boats to choose from. */
  public List<Boat> boats() {
    return session.workspace().boats();
  }

  /** The chosen boat today. */
  public Optional<Fitting> fitting() {
    return session.fitting();
  }

  /** Chooses a boat. */
  public void chooseBoat(String id) {
    session.choose(Optional.of(id));
  }

  /** Where something is noticed, and the symptoms to choose from. */
  public Whereabouts where() {
    return where;
  }

  /**
   * Starts tracing a symptom on the chosen boat, or goes on where its trace was left.
   *
   * @return whether there is such a symptom that fits the chosen boat
   */
  public boolean start(String symptom) {
    Optional<Fault> fault = fault(symptom);
    fault.ifPresent(found -> begun(symptom).ifPresentOrElse(this::keep, () -> begin(found)));
    return fault.isPresent();
  }

  private void begin(Fault fault) {
    boolean nothingToRead = fault.page().details().first().isEmpty();
    compute(Tracing.begin(Trace.begin(fault), nothingToRead));
  }

  private Optional<Tracing> begun(String symptom) {
    return session.boat().flatMap(boat -> tracings.of(boat.id(), symptom));
  }

  /** How many answers have been given to a symptom's trace on the chosen boat. */
  public int answersGiven(String symptom) {
    return begun(symptom).map(tracing -> tracing.trace().trail().size()).orElse(0);
  }

  private Optional<Fault> fault(String symptom) {
    Optional<Page<Symptom>> page = session.library().symptom(symptom);
    Optional<Fitting> fitting = session.fitting();
    if (page.isEmpty() || fitting.isEmpty() || !fitting.get().fits(page.get().head().fits())) {
      return Optional.empty();
    }
    return Optional.of(
        Fault.of(page.get(), fitting.get(), session.library(), session.workspace().cases()));
  }

  /** The trace of the chosen boat. */
  public Optional<Trace> trace() {
    return tracing().map(Tracing::trace);
  }

  private Optional<Tracing> tracing() {
    return session.boat().flatMap(boat -> tracings.current(boat.id()));
  }

  /** The step that is shown. */
  public Optional<NextStep> step() {
    return tracing().map(Tracing::step);
  }

  /** What was mended. */
  public Optional<FaultCause> mended() {
    return tracing().flatMap(Tracing::mended);
  }

  /** Whether a step is being computed, and answers have to wait. */
  public boolean isWorking() {
    return working;
  }

  /** The pages of the cautions that come before any question. */
  public List<Page<Caution>> cautions() {
    return trace().map(trace -> trace.fault().first()).orElse(List.of()).stream()
        .map(WorkCaution::page)
        .toList();
  }

  /** Says that the cautions have been read. */
  public void cautionsRead() {
    tracing().ifPresent(tracing -> keep(tracing.read()));
  }

  /** Answers a check, or changes its answer. */
  public void answer(String check, String answer) {
    change(trace -> trace.answer(check, answer));
  }

  /** Says that a check could not be told. */
  public void cantTell(String check) {
    change(trace -> trace.cantTell(check));
  }

  /** Takes an answer back. */
  public void takeBack(String check) {
    change(trace -> trace.takeBack(check));
  }

  /** Says that a mend did not cure the fault. */
  public void didNotHelp(String cause) {
    change(trace -> trace.mendTried(cause));
  }

  /** Takes back that a mend did not cure the fault. */
  public void takeBackMend(String cause) {
    change(trace -> trace.takeBackMend(cause));
  }

  /** Makes another step than the one advised. */
  public void pick(NextStep step) {
    tracing().ifPresent(tracing -> keep(tracing.pick(step)));
  }

  /** Says that the fault is mended, and what it was if that is known. */
  public void itIsMended(Optional<FaultCause> cause) {
    tracing().ifPresent(tracing -> keep(tracing.mended(cause)));
  }

  /** Goes on after all, from where the fault was said to be mended. */
  public void notMendedAfterAll() {
    tracing().ifPresent(tracing -> keep(tracing.with(tracing.trace())));
  }

  /** Leaves the trace as it stands, to choose another symptom. */
  public void leave() {
    latest.drop();
    working = false;
    session.boat().ifPresent(boat -> tracings.leave(boat.id()));
    tell();
  }

  /** Forgets the trace that is shown, to choose another symptom. */
  public void finish() {
    tracing().ifPresent(tracings::forget);
    leave();
  }

  /** Takes all answers back and begins the same trace anew. */
  public void startAgain() {
    tracing()
        .ifPresent(
            tracing -> {
              boolean read = tracing.cautionsRead();
              compute(Tracing.begin(Trace.begin(tracing.trace().fault()), read));
            });
  }

  private void change(UnaryOperator<Trace> change) {
    if (!working) {
      tracing().ifPresent(tracing -> compute(tracing.with(change.apply(tracing.trace()))));
    }
  }

  private void compute(Tracing tracing) {
    working = true;
    Workspace from = seen;
    latest.run(
        "Weighing the answers",
        () -> {
          tracing.trace().alternatives();
          tracing.trace().ranking();
          return tracing;
        },
        done -> {
          working = false;
          keep(from == seen ? done : new Again(seen, session.today()).of(done));
        },
        () -> working = false);
  }

  private void keep(Tracing tracing) {
    tracings.keep(tracing);
    tell();
  }

  private void sessionChanged() {
    if (session.workspace() != seen) {
      seen = session.workspace();
      tracings.renew(
          new Again(seen, session.today())::of, tracing -> Again.stillThere(tracing, seen));
    }
    where.check();
    tell();
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
