package limberboard.trace.review;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import limberboard.effort.Advice;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;
import limberboard.effort.Following;
import limberboard.trace.Fault;
import limberboard.trace.Trace;

/**
 * What it costs on average to begin with one step or another, reckoned one step further than the
 * trace's own advice: the step, and then what the trace expects after each way it can turn out.
 * Remembers what it has reckoned; may be shared between threads.
 */
final class FirstSteps {
  private final Trace trace;
  private final Map<Deed, Double> known = new ConcurrentHashMap<>();

  FirstSteps(Trace trace) {
    this.trace = trace;
  }

  /** What is done, whatever it costs: two causes may share their mend, which is then one deed. */
  record Deed(Action action, String id) {}

  Deed deed(Option option) {
    Fault fault = trace.fault();
    return new Deed(
        option.action(),
        switch (option.action()) {
          case CHECK -> fault.checks().get(option.index()).id();
          case MEND -> fault.causes().get(option.index()).mend();
          case YARD -> "";
        });
  }

  /** What the trace advises. */
  Option advised() {
    return trace.advice().best();
  }

  /** Expected minutes when a step is done first that is advised here or on another reckoning. */
  double minutes(Option advised) {
    return known.computeIfAbsent(deed(advised), deed -> reckoned(here(deed, advised)));
  }

  private Option here(Deed deed, Option otherwise) {
    return trace.advice().options().stream()
        .filter(option -> deed(option).equals(deed))
        .findFirst()
        .orElse(otherwise);
  }

  private double reckoned(Option first) {
    return new Following(
            trace.fault().model(),
            (model, now) ->
                now == trace.situation()
                    ? new Advice(List.of(first), 0)
                    : ended(trace.policy().advise(model, now)))
        .minutes(trace.situation());
  }

  /** Goes no further: everything that is still to come at once. */
  private static Advice ended(Advice advice) {
    double minutes = advice.best().expectedMinutes();
    return new Advice(
        List.of(new Option(Action.YARD, 0, minutes, minutes, Grounds.EFFORT)), advice.atLeast());
  }
}
