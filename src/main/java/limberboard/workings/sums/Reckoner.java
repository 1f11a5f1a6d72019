package limberboard.workings.sums;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import limberboard.library.problem.Nearest;
import limberboard.workings.QuantityWords;

/** Checks what is put into a sum, and computes where all of it can be used. For one reckoning. */
final class Reckoner {
  private final Sum sum;
  private final Map<String, Double> numbers = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();
  private final List<Reckoning.InputValue> put = new ArrayList<>();
  private final List<String> reasons = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();

  Reckoner(Sum sum) {
    this.sum = sum;
  }

  Reckoning reckon(Map<String, Value> values) {
    List<String> ids = sum.inputs().stream().map(Input::id).toList();
    values.keySet().stream().filter(id -> !ids.contains(id)).forEach(id -> unknown(id, ids));
    for (Input input : sum.inputs()) {
      Optional<Value> value = Optional.ofNullable(values.get(input.id()));
      if (input instanceof Input.Number number) {
        take(number, value);
      } else if (input instanceof Input.Choice choice) {
        take(choice, value);
      }
    }
    return reasons.isEmpty() ? computed() : new Reckoning.Refused(reasons);
  }

  private void unknown(String id, List<String> ids) {
    reasons.add(
        "\"" + id + "\" is no input of " + sum.id() + "; " + Nearest.advice(id, ids, known(ids)));
  }

  private static String known(List<String> ids) {
    return "there are " + String.join(", ", ids);
  }

  private void take(Input.Number input, Optional<Value> value) {
    if (value.isEmpty()) {
      input.usual().ifPresent(usual -> numbers.put(input.id(), usual));
      put.add(new Reckoning.InputValue(input, input.usualText(), true));
    } else if (value.get() instanceof Value.Measured measured) {
      take(input, measured);
    } else {
      wrong(input, "is a word here; write a quantity such as " + example(input));
    }
  }

  private void take(Input.Number input, Value.Measured measured) {
    Optional<Obstacle> obstacle = obstacle(input, measured.quantity());
    if (obstacle.isPresent()) {
      wrong(input, obstacle.get().what() + "; " + obstacle.get().right());
      return;
    }
    String written = QuantityWords.METRIC.written(measured.quantity());
    double number = input.unit().of(measured.quantity()).orElseThrow();
    numbers.put(input.id(), number);
    put.add(new Reckoning.InputValue(input, written, false));
    sound(input, number, written);
  }

  /**
   * Why a quantity cannot be put in.
   *
   * @param what what is wrong
   * @param right what would be right
   */
  record Obstacle(String what, String right) {}

  /** Why a quantity cannot be put in at an input; empty when it can. */
  static Optional<Obstacle> obstacle(Input.Number input, Quantity<?> quantity) {
    String written = QuantityWords.METRIC.written(quantity);
    OptionalDouble number = input.unit().of(quantity);
    if (number.isEmpty()) {
      return Optional.of(
          new Obstacle(written + " cannot be converted", "write it such as " + example(input)));
    }
    return input.allowed().contains(number.getAsDouble())
        ? Optional.empty()
        : Optional.of(
            new Obstacle(written + " cannot be computed", "it is " + input.allowedText()));
  }

  private void sound(Input.Number input, double number, String written) {
    if (!input.sound().contains(number)) {
      warnings.add(
          input.title()
              + ": "
              + written
              + " lies outside "
              + input.said(input.sound().least())
              + " to "
              + input.said(input.sound().most())
              + ", where the formula is known to hold; take the result as a rough guess.");
    }
  }

  private static String example(Input.Number input) {
    double example = input.usual().orElse(input.sound().most());
    return input.said(example).replace('²', '2');
  }

  private void take(Input.Choice input, Optional<Value> value) {
    String word = input.usual();
    if (value.isPresent()) {
      word = value.get() instanceof Value.Chosen chosen ? chosen.word() : "";
    }
    Optional<Input.Option> option = input.option(word);
    if (option.isEmpty()) {
      String said = word.isEmpty() ? "a quantity" : "\"" + word + "\"";
      String right = Nearest.advice(word, input.words(), "choose " + input.allowedText());
      wrong(input, said + " is not one of its words; " + right);
    } else {
      words.put(input.id(), word);
      put.add(new Reckoning.InputValue(input, option.get().title(), value.isEmpty()));
    }
  }

  private void wrong(Input input, String what) {
    reasons.add(input.id() + " (" + input.title() + "): " + what);
  }

  private Reckoning computed() {
    Answer answer = sum.work(new CheckedInputs(numbers, words));
    boolean finite = answer.results().stream().noneMatch(Result.Beyond.class::isInstance);
    if (!finite) {
      return new Reckoning.Refused(
          List.of("these numbers together lead beyond what can be computed; check each of them"));
    }
    List<String> all = new ArrayList<>(warnings);
    all.addAll(answer.warnings());
    return new Reckoning.Done(put, new Answer(answer.results(), answer.working(), all));
  }
}
