package limberboard.desktop.upkeep.sums;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.Boat;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;
import limberboard.workings.sums.Input;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Sum;
import limberboard.workings.sums.Value;

/**
 * What is put into one sum: what was typed, and where nothing was, the boat's own numbers or the
 * usual ones. Reckons as often as asked. For the event thread only.
 */
public final class SumForm {
  private static final double FAR = 2000;
  private final Sum sum;
  private final Map<String, String> typed = new HashMap<>();
  private final Map<String, KnownUnit> units = new HashMap<>();
  private Map<String, Value> own;

  /** A form with the boat's own numbers. */
  public SumForm(Sum sum, Optional<Boat> boat) {
    this.sum = sum;
    this.own = own(boat);
  }

  /** Takes the boat's own numbers as they now are; what was typed stays. */
  void follow(Optional<Boat> boat) {
    own = own(boat);
  }

  private Map<String, Value> own(Optional<Boat> boat) {
    return boat.map(sum::defaultsFor).orElse(Map.of());
  }

  /** The sum. */
  Sum sum() {
    return sum;
  }

  /** What stands in a field: what was typed, or the number, or the word of a choice. */
  String text(Input input) {
    return typed.getOrDefault(input.id(), standing(input));
  }

  /** Types into a field, or chooses a word; what stands there anyway does not count as typed. */
  public void type(Input input, String text) {
    if (text.equals(standing(input))) {
      typed.remove(input.id());
    } else {
      typed.put(input.id(), text);
    }
  }

  /** The unit that is chosen beside a number. */
  KnownUnit unit(Input.Number input) {
    return units.getOrDefault(input.id(), input.unit());
  }

  /**
   * Chooses a unit. A number that was typed stays as it is and now counts in this unit; a number
   * that stands there by itself is converted.
   */
  void unit(Input.Number input, KnownUnit unit) {
    units.put(input.id(), unit);
  }

  /** The units that can be chosen: those of the same dimension and not far off in size. */
  static List<KnownUnit> units(Input.Number input) {
    return Arrays.stream(KnownUnit.values()).filter(unit -> isNear(unit, input.unit())).toList();
  }

  private static boolean isNear(KnownUnit unit, KnownUnit usual) {
    OptionalDouble times = usual.of(unit.quantity(1));
    boolean countOrShare = unit == KnownUnit.PIECES || unit == KnownUnit.HUNDREDTHS;
    return unit == usual
        || (!countOrShare
            && times.isPresent()
            && times.getAsDouble() <= FAR
            && times.getAsDouble() >= 1 / FAR);
  }

  /** What stands in a field by itself. */
  private String standing(Input input) {
    Optional<Value> known = Optional.ofNullable(own.get(input.id()));
    if (input instanceof Input.Choice choice) {
      return known
          .filter(Value.Chosen.class::isInstance)
          .map(value -> ((Value.Chosen) value).word())
          .orElse(choice.usual());
    }
    Input.Number number = (Input.Number) input;
    return standing(number, known).map(QuantityWords::plain).orElse("");
  }

  private Optional<Double> standing(Input.Number input, Optional<Value> known) {
    KnownUnit shown = unit(input);
    if (known.isPresent() && known.get() instanceof Value.Measured measured) {
      OptionalDouble value = shown.of(measured.quantity());
      return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
    if (input.usual().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(shown.of(input.unit().quantity(input.usual().getAsDouble())).orElseThrow());
  }

  /** Where the value in a field comes from. */
  Origin origin(Input input) {
    if (typed.containsKey(input.id())) {
      return Origin.TYPED;
    }
    return own.containsKey(input.id()) ? Origin.BOAT : Origin.USUAL;
  }

  /** Where values come from. */
  enum Origin {
    /** Somebody typed or chose it. */
    TYPED,
    /** It is the boat's own. */
    BOAT,
    /** It is usual. */
    USUAL
  }

  /** Whether anything was typed or chosen. */
  boolean isTouched() {
    return !typed.isEmpty() || !units.isEmpty();
  }

  /** Back to the boat's own numbers and the usual ones. */
  void reset() {
    typed.clear();
    units.clear();
  }

  /** What is wrong with what was typed, and what would be right; empty when nothing is. */
  public String problem(Input input) {
    if (!(input instanceof Input.Number number) || isLeftOut(input)) {
      return "";
    }
    NumberText.Read read = read(number);
    return read.quantity()
        .map(quantity -> number.against(quantity).map(why -> why + ".").orElse(""))
        .orElse(read.wrong());
  }

  private boolean isLeftOut(Input input) {
    return text(input).isBlank();
  }

  private NumberText.Read read(Input.Number input) {
    return NumberText.read(text(input), unit(input));
  }

  /** Whether every field can be put in. */
  boolean isRight() {
    return sum.inputs().stream().allMatch(input -> problem(input).isEmpty());
  }

  /** Reckons with what stands in the fields; what is empty or wrong has its usual value. */
  public Reckoning reckoning() {
    Map<String, Value> values = new LinkedHashMap<>();
    for (Input input : sum.inputs()) {
      if (origin(input) == Origin.BOAT) {
        values.put(input.id(), own.get(input.id()));
      } else if (origin(input) == Origin.TYPED && !isLeftOut(input)) {
        typed(input).ifPresent(value -> values.put(input.id(), value));
      }
    }
    return sum.reckon(values);
  }

  private Optional<Value> typed(Input input) {
    return input instanceof Input.Number number
        ? read(number).quantity().map(Value.Measured::new)
        : Optional.of(Value.of(text(input)));
  }
}
