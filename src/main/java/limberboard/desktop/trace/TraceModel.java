package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.library.page.Page;
import limberboard.trace.CautionsRead;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/**
 * What the trace place shows and does, without Swing. Whatever takes time is worked out in the
 * background; until then things stay as they are, and {@link #isWorking} says so. An answer given
 * meanwhile counts as well. For the event thread only.
 */
public final class TraceModel extends Observed implements CautionReading {
  private final Session session;
  private final KeptTraces kept;
  private final TraceKeeper traces;
  private final Whereabouts where;

  /** A model without a trace that keeps none until next time. */
  TraceModel(Session session, Background background) {
    this(
        session,
        background,
        new KeptTraces(TraceStore.NONE, background, new Notices()),
        new Notices(),
        Guard.NONE);
  }

  /**
   * A model without a trace.
   *
   * @param session tells library and boat
   * @param background computes chances and next steps
   * @param kept keeps traces until next time
   * @param notices is told what could not be gone on with
   * @param guard is told of work that must not run on the event thread
   */
  public TraceModel(
      Session session, Background background, KeptTraces kept, Notices notices, Guard guard) {
    this.session = session;
    this.kept = kept;
    this.traces = new TraceKeeper(session, background, kept, notices, guard, this::tell);
    this.where = new Whereabouts(session, background, guard, this::tell);
    session.onChange(this::sessionChanged);
  }

  /** How far things have come for the chosen boat. */
  public Stage stage() {
    if (!session.isRead()) {
      return Stage.READING;
    }
    if (session.boat().isEmpty()) {
      return Stage.NO_BOAT;
    }
    return traces.now().map(BoatTrace::stage).orElse(Stage.CHOOSING);
  }

  /** Where somebody is who traces: the stage, and the step where there is one. */
  record At(Stage stage, Optional<NextStep.Which> step) {}

  /** Where things stand; the same as long as the same is to be done. */
  At at() {
    return new At(stage(), step().map(NextStep::which));
  }

  /** The chosen boat today. */
  public Optional<Fitting> fitting() {
    return session.fitting();
  }

  /** Where something is noticed, and the symptoms to choose from. */
  public Whereabouts where() {
    return where;
  }

  /**
   * Starts tracing a symptom on the chosen boat, or goes on where its trace was left, be it on
   * another day.
   *
   * @return whether there is such a symptom that fits the chosen boat
   */
  public boolean start(String symptom) {
    Optional<Fitting> fitting =
        session
            .fitting()
            .filter(
                boat ->
                    session
                        .library()
                        .symptom(symptom)
                        .filter(page -> boat.fits(page.head().fits()))
                        .isPresent());
    fitting.ifPresent(boat -> traces.start(symptom, boat));
    return fitting.isPresent();
  }

  /** Traces of the chosen boat kept from earlier days, the latest first. */
  public List<KeptTrace> keptTraces() {
    return session.boat().map(boat -> kept.of(boat.id())).orElse(List.of()).stream()
        .filter(trace -> session.library().symptom(trace.symptom()).isPresent())
        .toList();
  }

  /** What a symptom is called; its id in words when the library has it no longer. */
  String symptomTitle(String id) {
    return session.library().symptom(id).map(Page::title).orElseGet(() -> Sentences.spoken(id));
  }

  /** Drops a trace kept from an earlier day. */
  public void drop(KeptTrace trace) {
    kept.drop(trace.key());
    tell();
  }

  /** The trace of the chosen boat. */
  public Optional<Trace> trace() {
    return traces.now().map(BoatTrace::trace);
  }

  /** The step that is shown. */
  public Optional<NextStep> step() {
    return traces.now().map(BoatTrace::step);
  }

  /** What was mended. */
  public Optional<FaultCause> mended() {
    return traces.now().flatMap(BoatTrace::mended);
  }

  /** Whether something is being worked out for the trace that is shown or begun. */
  public boolean isWorking() {
    return traces.isBusy();
  }

  /** The cautions that come before any question. */
  public List<WorkCaution> cautions() {
    return traces.now().map(BoatTrace::first).orElse(List.of());
  }

  /** The cautions of a step beside those that have been read and stand above the whole trace. */
  public List<WorkCaution> cautions(NextStep step) {
    List<WorkCaution> above = cautions().stream().filter(each -> read().isRead(each)).toList();
    return step.cautions().stream()
        .filter(each -> above.stream().noneMatch(each::isSameAs))
        .toList();
  }

  /** The cautions of the symptom, and those of the step that is shown, each once. */
  List<WorkCaution> cautionsHere() {
    List<WorkCaution> all = new ArrayList<>(cautions());
    step().map(NextStep::cautions).orElse(List.of()).stream()
        .filter(each -> all.stream().noneMatch(each::isSameAs))
        .forEach(all::add);
    return all;
  }

  /** Which cautions have been read in the trace that is shown. */
  @Override
  public CautionsRead read() {
    return traces.now().map(BoatTrace::read).orElse(CautionsRead.NONE);
  }

  /** Says that these cautions have been read. */
  @Override
  public void read(List<WorkCaution> cautions) {
    traces.reading(tracing -> tracing.reading(tracing.read().with(cautions)));
  }

  /** Answers the question on which it hangs whether there is an emergency. */
  public void answerEmergency(WorkCaution caution, boolean yes) {
    traces.reading(tracing -> tracing.reading(tracing.read().answered(caution, yes)));
  }

  /** Asks again whether there is an emergency. */
  @Override
  public void askAgain(WorkCaution caution) {
    traces.reading(tracing -> tracing.reading(tracing.read().askedAgain(caution)));
  }

  /**
   * Says that the symptom's cautions have been read, and goes on; without effect as long as a
   * question of theirs is not answered.
   */
  public void cautionsRead() {
    traces.reading(BoatTrace::goingOn);
  }

  /** Answers a check, or changes its answer. */
  public void answer(String check, String answer) {
    traces.change("the answer", trace -> trace.answer(check, answer));
  }

  /** Says that a check could not be told. */
  public void cantTell(String check) {
    traces.change("the answer", trace -> trace.cantTell(check));
  }

  /** Says that what a check that comes first asks for has been made safe. */
  public void madeSafe(String check) {
    traces.change("saying that it is safe", trace -> trace.madeSafe(check));
  }

  /** Takes back that it was made safe. */
  public void takeBackSafe(String check) {
    traces.change("taking it back", trace -> trace.takeBackSafe(check));
  }

  /** Takes an answer back. */
  public void takeBack(String check) {
    traces.change("taking an answer back", trace -> trace.takeBack(check));
  }

  /** Says that a mend did not cure the fault. */
  public void didNotHelp(String cause) {
    traces.change("\u201cIt did not help\u201d", trace -> trace.mendTried(cause));
  }

  /** Takes back that a mend did not cure the fault. */
  public void takeBackMend(String cause) {
    traces.change("taking a mend back", trace -> trace.takeBackMend(cause));
  }

  /** Makes another step than the one advised; not before what safety demands has been passed. */
  public void pick(NextStep step) {
    if (trace().filter(Trace::isSafe).isPresent()) {
      traces.atOnce("choosing another step", tracing -> tracing.pick(step));
    }
  }

  /** Says that the fault is mended, and what it was if that is known. */
  public void itIsMended(Optional<FaultCause> cause) {
    traces.atOnce("\u201cIt is mended\u201d", tracing -> tracing.mended(cause));
  }

  /** Goes on after all, from where the fault was said to be mended. */
  public void notMendedAfterAll() {
    traces.atOnce(
        "\u201cIt is not mended after all\u201d", tracing -> tracing.with(tracing.trace()));
  }

  /** How many answers have been given to a symptom's trace on the chosen boat. */
  public int answersGiven(String symptom) {
    return traces.answersGiven(symptom);
  }

  /** Leaves the trace as it stands, to choose another symptom. */
  public void leave() {
    traces.leave();
  }

  /** Forgets the trace that is shown, to choose another symptom. */
  public void finish() {
    traces.finish();
  }

  /** Takes all answers back and begins the same trace anew. */
  public void startAgain() {
    traces.startAgain();
  }

  /** What would be undone in the trace that is shown, in words: "the answer". */
  public Optional<String> undoes() {
    return traces.undoes();
  }

  /** What would be done again in the trace that is shown. */
  public Optional<String> redoes() {
    return traces.redoes();
  }

  /** Undoes what was done last in the trace that is shown; without effect when nothing was. */
  public void undo() {
    traces.undo();
  }

  /** Does again what was undone last. */
  public void redo() {
    traces.redo();
  }

  private void sessionChanged() {
    if (session.isRead()) {
      kept.read(this::tell);
    }
    where.check();
    tell();
    traces.bringUpToDate();
  }
}
