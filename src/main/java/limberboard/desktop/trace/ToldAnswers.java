package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import limberboard.library.page.Check;
import limberboard.trace.Trace;
import limberboard.trace.TrailStep;

/**
 * Adds what an owner has told in a letter to a trace, once that has been worked out, as one step
 * that can be undone. What safety demands is asked for again: nobody knows what has happened since.
 * For the event thread only.
 */
public final class ToldAnswers {
  private final TraceModel model;
  private Optional<Told> waiting = Optional.empty();

  private record Told(String boat, String symptom, List<TrailStep> steps) {
    boolean isOf(Trace trace) {
      return trace.fault().page().id().equals(symptom)
          && trace.fault().fitting().boat().id().equals(boat);
    }
  }

  /** Adds to the traces of this model. */
  public ToldAnswers(TraceModel model) {
    this.model = model;
    model.onChange(this::look);
  }

  /**
   * Starts tracing a symptom on the chosen boat, or goes on with its trace, with these answers.
   *
   * @return whether there is such a symptom that fits the chosen boat
   */
  public boolean start(String symptom, List<TrailStep> steps) {
    boolean fits = model.start(symptom);
    if (fits) {
      waiting =
          model
              .fitting()
              .map(fitting -> new Told(fitting.boat().id(), symptom, List.copyOf(steps)));
      look();
    }
    return fits;
  }

  private void look() {
    Optional<Trace> trace = model.trace();
    if (waiting.isPresent()
        && trace.filter(waiting.get()::isOf).isPresent()
        && !model.isWorking()) {
      List<TrailStep> steps = waiting.get().steps();
      waiting = Optional.empty();
      steps.stream().filter(step -> isNew(trace.get(), step)).forEach(this::add);
    }
  }

  private static boolean isNew(Trace trace, TrailStep step) {
    Optional<Check> check =
        trace.fault().page().details().checks().stream()
            .filter(each -> each.id().equals(step.id()))
            .findFirst();
    boolean known = trace.trail().stream().anyMatch(entry -> entry.step().equals(step));
    boolean possible =
        !(step instanceof TrailStep.Answered answered)
            || check.filter(each -> each.answers().contains(answered.answer())).isPresent();
    return !known
        && possible
        && trace.fault().hasCheck(step.id())
        && check.filter(each -> !each.comesFirst()).isPresent();
  }

  private void add(TrailStep step) {
    if (step instanceof TrailStep.Answered answered) {
      model.answer(answered.id(), answered.answer());
    } else if (step instanceof TrailStep.CouldNotTell unsure) {
      model.cantTell(unsure.id());
    }
  }
}
