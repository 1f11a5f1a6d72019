package limberboard.desktop.trace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.CaseWriter;
import limberboard.boat.CaseWriter.Outcome;
import limberboard.boat.CaseWriter.Written;
import limberboard.boat.RecordedCase;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.trace.FaultCause;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep.CouldNotTell;

/**
 * Keeps mended faults as cases, with the boat's facts and without a name, and takes them out again,
 * without Swing. What is kept stands until the trace is over. For the event thread only.
 */
public final class MendedCases extends Observed {
  private final Session session;
  private final CaseWriter writer;
  private final Background background;
  private final Notices notices;
  private final Map<Mended, Written> kept = new HashMap<>();
  private Runnable afterWriting = () -> {};
  private boolean busy;

  /**
   * Nothing is kept yet.
   *
   * @param session tells library and day
   * @param writer writes the files
   * @param background runs it
   * @param notices is told what could not be written
   */
  public MendedCases(Session session, CaseWriter writer, Background background, Notices notices) {
    this.session = session;
    this.writer = writer;
    this.background = background;
    this.notices = notices;
  }

  /** Says what happens once a case has been written: the cases are read anew. */
  public void afterWriting(Runnable action) {
    afterWriting = action;
  }

  /**
   * A fault that was mended.
   *
   * @param cause what it was; empty when that is not known
   */
  record Mended(TraceKey key, Optional<String> cause) {
    static Mended of(Trace trace, Optional<FaultCause> cause) {
      TraceKey key = new TraceKey(trace.fault().fitting().boat().id(), trace.fault().page().id());
      return new Mended(key, cause.map(FaultCause::id));
    }
  }

  /** The case that a fault is kept as, if it is. */
  Optional<RecordedCase> kept(Mended mended) {
    return Optional.ofNullable(kept.get(mended)).map(Written::recorded);
  }

  /** Whether something is being written. */
  boolean isBusy() {
    return busy;
  }

  /** Keeps a fault as a case; without effect where it is kept. */
  void keep(Trace trace, Optional<FaultCause> cause) {
    Mended mended = Mended.of(trace, cause);
    if (!busy && !kept.containsKey(mended)) {
      RecordedCase recorded = recorded(trace, cause);
      var library = session.library();
      write(
          "Keeping the case",
          () -> writer.create(library, recorded),
          written -> kept.put(mended, written));
    }
  }

  /** Takes the case out again; without effect where there is none. */
  void takeOut(Mended mended) {
    if (!busy && kept.containsKey(mended)) {
      Written written = kept.get(mended);
      write("Taking the case out", () -> writer.undo(written), done -> kept.remove(mended));
    }
  }

  /** The trace is over: what was kept stays in its file, and the next fault is another one. */
  void over(Mended mended) {
    kept.remove(mended);
  }

  private interface Done {
    void with(Written written);
  }

  private void write(String doing, Supplier<Outcome> work, Done done) {
    busy = true;
    tell();
    background.run(
        doing,
        work::get,
        outcome -> {
          busy = false;
          if (outcome instanceof Written written) {
            done.with(written);
            afterWriting.run();
          } else {
            notices.warn("Nothing was written: " + ((CaseWriter.Refused) outcome).problem() + ".");
          }
          tell();
        },
        () -> {
          busy = false;
          tell();
        });
  }

  private RecordedCase recorded(Trace trace, Optional<FaultCause> cause) {
    List<String> cantTell = new ArrayList<>();
    for (TrailEntry entry : trace.trail()) {
      if (entry.step() instanceof CouldNotTell could) {
        cantTell.add(could.id());
      }
    }
    Optional<String> mend = cause.filter(known -> !known.isSomethingElse()).map(FaultCause::mend);
    CaseEnd end =
        cause.isEmpty()
            ? CaseEnd.OPEN
            : new CaseEnd(
                Optional.of(CaseOutcome.MENDED),
                "",
                mend,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    return new RecordedCase(
        "",
        trace.fault().page().id(),
        cause.map(FaultCause::id),
        session.today(),
        CaseBoat.of(trace.fault().fitting().boat(), false),
        trace.answers(),
        cantTell,
        end,
        "");
  }
}
