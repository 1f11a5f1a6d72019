package limberboard.desktop.trace;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/**
 * The traces of all boats: works them out in the background, keeps them until next time and up to
 * date with files and days, and undoes what was done in them. For the event thread only.
 */
final class TraceKeeper {
  private final Session session;
  private final KeptTraces kept;
  private final Notices notices;
  private final Guard guard;
  private final Runnable changed;
  private final Weighings weighings;
  private final Tracings tracings = new Tracings();
  private final Map<TraceKey, Undo> undos = new HashMap<>();

  /**
   * No traces yet.
   *
   * @param changed called after each change
   */
  TraceKeeper(
      Session session,
      Background background,
      KeptTraces kept,
      Notices notices,
      Guard guard,
      Runnable changed) {
    this.session = session;
    this.kept = kept;
    this.notices = notices;
    this.guard = guard;
    this.changed = changed;
    this.weighings = new Weighings(background);
  }

  /** Whether something is being worked out for the trace that is shown or begun. */
  boolean isBusy() {
    return key().filter(weighings::isBusy).isPresent();
  }

  /** Works the trace that is shown out anew when files or the day have changed since it was. */
  void bringUpToDate() {
    key().ifPresent(this::bringUpToDate);
  }

  /** Begins tracing a symptom on the chosen boat, or goes on where its trace was left. */
  void start(String symptom, Fitting boat) {
    TraceKey key = new TraceKey(boat.boat().id(), symptom);
    TraceReplay again = again(boat);
    tracings.go(key);
    if (tracings.of(key).isPresent()) {
      changed.run();
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

  /** How many answers have been given to a symptom's trace on the chosen boat. */
  int answersGiven(String symptom) {
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

  /** The trace that the chosen boat is at, if it has been worked out. */
  Optional<BoatTrace> now() {
    return key().flatMap(tracings::of);
  }

  private Optional<TraceKey> key() {
    return session.boat().flatMap(boat -> tracings.at(boat.id()));
  }

  /** Leaves the trace as it stands, to choose another symptom. */
  void leave() {
    key().filter(key -> tracings.of(key).isEmpty()).ifPresent(weighings::drop);
    session.boat().ifPresent(boat -> tracings.leave(boat.id()));
    changed.run();
  }

  /** Forgets the trace that is shown, to choose another symptom. */
  void finish() {
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
  void startAgain() {
    now()
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
  Optional<String> undoes() {
    return key().map(undos::get).flatMap(Undo::what);
  }

  /** What would be done again in the trace that is shown. */
  Optional<String> redoes() {
    return key().map(undos::get).flatMap(Undo::whatAgain);
  }

  /** Undoes what was done last in the trace that is shown; without effect when nothing was. */
  void undo() {
    step(Undo::back);
  }

  /** Does again what was undone last. */
  void redo() {
    step(Undo::forward);
  }

  private void step(BiFunction<Undo, BoatTrace, Optional<BoatTrace>> move) {
    Optional<TraceKey> key = key();
    Optional<BoatTrace> now = now();
    if (key.isEmpty() || now.isEmpty() || !undos.containsKey(key.get())) {
      return;
    }
    if (weighings.wanted(key.get()).isPresent()) {
      weighings.drop(key.get());
      changed.run();
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

  /** Changes the answers of the trace that is shown; what follows is worked out first. */
  void change(String what, UnaryOperator<Trace> change) {
    now()
        .ifPresent(
            shown -> {
              BoatTrace base = weighings.wanted(shown.key()).orElse(shown);
              Trace next = change.apply(base.trace());
              if (next != base.trace()) {
                weigh(what, base.with(next));
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

  /** Changes what is shown of the trace, where nothing has to be worked out. */
  void atOnce(String what, UnaryOperator<BoatTrace> change) {
    now()
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
      TraceKey key, Optional<BoatTrace> wanted, Callable<T> work, Consumer<T> done) {
    weighings.run(key, wanted, work, done, changed);
    if (weighings.isBusy(key)) {
      changed.run();
    }
  }

  /**
   * Keeps a trace as it stands now. What has been read of it meanwhile stays read, also where
   * something was undone.
   */
  private void keep(BoatTrace tracing) {
    put(tracings.of(tracing.key()).map(tracing::knowing).orElse(tracing));
  }

  private void put(BoatTrace tracing) {
    tracings.keep(tracing);
    kept.keep(tracing);
    changed.run();
  }

  /** Notes what has been read in the trace that is shown. It is nothing that is undone. */
  void reading(UnaryOperator<BoatTrace> change) {
    now().map(change).ifPresent(this::put);
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
        "The library no longer has the symptom "
            + Sentences.quoted(Sentences.spoken(key.symptom()))
            + " for this boat, so its trace has ended.");
    changed.run();
  }
}
