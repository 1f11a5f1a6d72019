package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/**
 * What the trace place shows and does, without Swing. Whatever takes time is worked out in the
 * background; until then things stay as they are, and {@link #isWorking} says so. An answer given
 * meanwhile counts as well. For the event thread only.
 */
public final class TraceModel extends Observed {
  private final Session session;
  private final KeptTraces kept;
  private final Notices notices;
  private final Guard guard;
  private final Weighings weighings;
  private final Tracings tracings = new Tracings();
  private final Map<TraceKey, Undo> undos = new HashMap<>();
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
    this.notices = notices;
    this.guard = guard;
    this.weighings = new Weighings(background);
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
    return tracing().map(BoatTrace::stage).orElse(Stage.CHOOSING);
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
    fitting.ifPresent(boat -> start(new TraceKey(boat.boat().id(), symptom), again(boat)));
    return fitting.isPresent();
  }

  private void start(TraceKey key, TraceReplay again) {
    tracings.go(key);
    if (tracings.of(key).isPresent()) {
      tell();
      bringUpToDate(key);
    } else if (kept.of(key).isPresent()) {
      KeptTrace from = kept.of(key).get();
      work(key, Optional.empty(), () -> again.of(from), found -> renewed(key, found));
    } else {
      work(
          key,
          Optional.empty(),
          () -> again.begin(key.symptom()),
          found -> found.ifPresentOrElse(this::keep, () -> gone(key)));
    }
  }

  private TraceReplay again(Fitting fitting) {
    return new TraceReplay(session.workspace(), fitting, guard);
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

  /** How many answers have been given to a symptom's trace on the chosen boat. */
  public int answersGiven(String symptom) {
    return session
        .boat()
        .map(boat -> new TraceKey(boat.id(), symptom))
        .map(
            key ->
                tracings
                    .of(key)
                    .map(tracing -> tracing.trace().trail().size())
                    .orElseGet(() -> kept.of(key).map(trace -> trace.steps().size()).orElse(0)))
        .orElse(0);
  }

  /** The trace of the chosen boat. */
  public Optional<Trace> trace() {
    return tracing().map(BoatTrace::trace);
  }

  private Optional<BoatTrace> tracing() {
    return key().flatMap(tracings::of);
  }

  private Optional<TraceKey> key() {
    return session.boat().flatMap(boat -> tracings.at(boat.id()));
  }

  /** The step that is shown. */
  public Optional<NextStep> step() {
    return tracing().map(BoatTrace::step);
  }

  /** What was mended. */
  public Optional<FaultCause> mended() {
    return tracing().flatMap(BoatTrace::mended);
  }

  /** Whether something is being worked out for the trace that is shown or begun. */
  public boolean isWorking() {
    return key().filter(weighings::isBusy).isPresent();
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
    change("the answer", trace -> trace.answer(check, answer));
  }

  /** Says that a check could not be told. */
  public void cantTell(String check) {
    change("the answer", trace -> trace.cantTell(check));
  }

  /** Says that what a check that comes first asks for has been made safe. */
  public void madeSafe(String check) {
    change("saying that it is safe", trace -> trace.madeSafe(check));
  }

  /** Takes back that it was made safe. */
  public void takeBackSafe(String check) {
    change("taking it back", trace -> trace.takeBackSafe(check));
  }

  /** Takes an answer back. */
  public void takeBack(String check) {
    change("taking an answer back", trace -> trace.takeBack(check));
  }

  /** Says that a mend did not cure the fault. */
  public void didNotHelp(String cause) {
    change("\u201cIt did not help\u201d", trace -> trace.mendTried(cause));
  }

  /** Takes back that a mend did not cure the fault. */
  public void takeBackMend(String cause) {
    change("taking a mend back", trace -> trace.takeBackMend(cause));
  }

  /** Makes another step than the one advised; not before what safety demands has been passed. */
  public void pick(NextStep step) {
    if (trace().filter(Trace::isSafe).isPresent()) {
      atOnce("choosing another step", tracing -> tracing.pick(step));
    }
  }

  /** Says that the fault is mended, and what it was if that is known. */
  public void itIsMended(Optional<FaultCause> cause) {
    atOnce("\u201cIt is mended\u201d", tracing -> tracing.mended(cause));
  }

  /** Goes on after all, from where the fault was said to be mended. */
  public void notMendedAfterAll() {
    atOnce("\u201cIt is not mended after all\u201d", tracing -> tracing.with(tracing.trace()));
  }

  /** Leaves the trace as it stands, to choose another symptom. */
  public void leave() {
    key().filter(key -> tracings.of(key).isEmpty()).ifPresent(weighings::drop);
    session.boat().ifPresent(boat -> tracings.leave(boat.id()));
    tell();
  }

  /** Forgets the trace that is shown, to choose another symptom. */
  public void finish() {
    key().ifPresent(this::forget);
    leave();
  }

  private void forget(TraceKey key) {
    weighings.drop(key);
    tracings.forget(key);
    undos.remove(key);
    kept.drop(key);
  }

  /** Takes all answers back and begins the same trace anew. */
  public void startAgain() {
    tracing()
        .filter(tracing -> !tracing.trace().trail().isEmpty() || tracing.picked().isPresent())
        .ifPresent(
            tracing ->
                weigh(
                    "starting again",
                    tracing.with(
                        Trace.begin(
                            tracing.trace().fault(), () -> guard.begins("planning a step")))));
  }

  /** What would be undone in the trace that is shown, in words: "the answer". */
  public Optional<String> undoes() {
    return key().map(undos::get).flatMap(Undo::what);
  }

  /** What would be done again in the trace that is shown. */
  public Optional<String> redoes() {
    return key().map(undos::get).flatMap(Undo::whatAgain);
  }

  /** Undoes what was done last in the trace that is shown; without effect when nothing was. */
  public void undo() {
    step(Undo::back);
  }

  /** Does again what was undone last. */
  public void redo() {
    step(Undo::forward);
  }

  private void step(java.util.function.BiFunction<Undo, BoatTrace, Optional<BoatTrace>> move) {
    Optional<TraceKey> key = key();
    Optional<BoatTrace> now = tracing();
    if (key.isEmpty() || now.isEmpty() || !undos.containsKey(key.get())) {
      return;
    }
    if (weighings.wanted(key.get()).isPresent()) {
      weighings.drop(key.get());
      tell();
      bringUpToDate(key.get());
      return;
    }
    move.apply(undos.get(key.get()), now.get())
        .ifPresent(
            other -> {
              keep(other);
              bringUpToDate(key.get());
            });
  }

  private void change(String what, UnaryOperator<Trace> change) {
    tracing()
        .ifPresent(
            shown -> {
              BoatTrace base = weighings.wanted(shown.key()).orElse(shown);
              Trace changed = change.apply(base.trace());
              if (changed != base.trace()) {
                weigh(what, base.with(changed));
              }
            });
  }

  private void weigh(String what, BoatTrace wanted) {
    work(
        wanted.key(),
        Optional.of(wanted),
        () -> {
          wanted.trace().workedOut();
          return wanted;
        },
        done -> {
          note(what, done.key());
          keep(done);
          bringUpToDate(done.key());
        });
  }

  private void atOnce(String what, UnaryOperator<BoatTrace> change) {
    tracing()
        .ifPresent(
            tracing -> {
              weighings.drop(tracing.key());
              note(what, tracing.key());
              keep(change.apply(tracing));
              bringUpToDate(tracing.key());
            });
  }

  private void note(String what, TraceKey key) {
    tracings
        .of(key)
        .ifPresent(before -> undos.computeIfAbsent(key, unseen -> new Undo()).done(what, before));
  }

  private <T> void work(
      TraceKey key,
      Optional<BoatTrace> wanted,
      java.util.concurrent.Callable<T> work,
      Consumer<T> done) {
    weighings.run(key, wanted, work, done, this::tell);
    if (weighings.isBusy(key)) {
      tell();
    }
  }

  private void keep(BoatTrace tracing) {
    tracings.keep(tracing);
    kept.keep(tracing);
    tell();
  }

  /** Works a trace out anew when files have changed or a day has passed since it was. */
  private void bringUpToDate(TraceKey key) {
    Optional<Fitting> fitting =
        session.fitting().filter(boat -> boat.boat().id().equals(key.boat()));
    Optional<BoatTrace> old =
        tracings
            .of(key)
            .filter(tracing -> !tracing.isOf(session.workspace(), session.today()))
            .filter(tracing -> weighings.wanted(key).isEmpty());
    if (fitting.isPresent() && old.isPresent()) {
      TraceReplay again = again(fitting.get());
      work(key, Optional.empty(), () -> again.of(old.get()), found -> renewed(key, found));
    }
  }

  private void renewed(TraceKey key, Optional<TraceReplay.Renewed> found) {
    if (found.isEmpty()) {
      gone(key);
      return;
    }
    int leftOut = found.get().leftOut();
    if (leftOut > 0) {
      notices.warn(
          "The library has changed: "
              + (leftOut == 1 ? "1 of your answers fits" : leftOut + " of your answers fit")
              + " no check any longer and "
              + (leftOut == 1 ? "is" : "are")
              + " left out of the trace.");
    }
    keep(found.get().tracing());
    bringUpToDate(key);
  }

  private void gone(TraceKey key) {
    weighings.drop(key);
    tracings.forget(key);
    undos.remove(key);
    notices.warn(
        "The library no longer has the symptom \u201c"
            + Sentences.spoken(key.symptom())
            + "\u201d for this boat, so its trace has ended.");
    tell();
  }

  private void sessionChanged() {
    if (session.isRead()) {
      kept.read(this::tell);
    }
    where.check();
    tell();
    key().ifPresent(this::bringUpToDate);
  }
}
