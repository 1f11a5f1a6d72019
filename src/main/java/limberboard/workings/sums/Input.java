package limberboard.workings.sums;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import limberboard.library.value.KnownUnit;
import limberboard.workings.QuantityWords;

/** Something that is put into a sum. */
public sealed interface Input {

  /** What files and commands call it: lower case with hyphens. */
  String id();

  /** What a form calls it. */
  String title();

  /** What stands when nothing is put in, in words. */
  String usualText();

  /** What may be put in, in words. */
  String allowedText();

  /**
   * A quantity.
   *
   * @param id its id
   * @param title its title
   * @param unit the unit that the sum counts it in; any unit of the same dimension may be put in
   * @param usual what stands when nothing is put in, in the unit; empty: the sum does without
   * @param otherwise what the sum does without it, in words; empty where there is a usual value
   * @param allowed what can be computed, in the unit
   * @param sound where the formula is known to hold, in the unit
   */
  record Number(
      String id,
      String title,
      KnownUnit unit,
      OptionalDouble usual,
      String otherwise,
      Span allowed,
      Span sound)
      implements Input {

    /**
     * A number that is allowed and sound in the same span.
     *
     * @param usual what stands when nothing is put in
     * @param least the least that can be computed
     * @param most the most
     */
    public static Number of(
        String id, String title, KnownUnit unit, double usual, double least, double most) {
      Span span = new Span(least, most);
      return new Number(id, title, unit, OptionalDouble.of(usual), "", span, span);
    }

    /** The same, known to hold only within a narrower span. */
    public Number soundWithin(double least, double most) {
      return new Number(id, title, unit, usual, otherwise, allowed, new Span(least, most));
    }

    /** The same without a usual value: {@code by the kind of battery}. */
    public Number orElse(String without) {
      return new Number(id, title, unit, OptionalDouble.empty(), without, allowed, sound);
    }

    @Override
    public String usualText() {
      return usual.isPresent() ? said(usual.getAsDouble()) : otherwise;
    }

    @Override
    public String allowedText() {
      return said(allowed.least()) + " to " + said(allowed.most());
    }

    /** Where the formula is known to hold, in words. */
    public String soundText() {
      return said(sound.least()) + " to " + said(sound.most());
    }

    /**
     * Why a quantity cannot be put in here, and what could; empty when it can.
     *
     * @param quantity in any unit
     */
    public Optional<String> against(Quantity<?> quantity) {
      return Reckoner.obstacle(this, quantity)
          .map(obstacle -> obstacle.what() + "; " + obstacle.right());
    }

    /** A value in this input's unit, in words. */
    String said(double value) {
      return QuantityWords.METRIC.rounded(unit.quantity(value));
    }
  }

  /**
   * One of several words.
   *
   * @param id its id
   * @param title its title
   * @param options what there is to choose from, in the order of a form
   * @param usual the word that stands when nothing is put in
   */
  record Choice(String id, String title, List<Option> options, String usual) implements Input {
    /** Copies the list. */
    public Choice {
      options = List.copyOf(options);
    }

    /** A choice of which the first is the usual one. */
    public static Choice of(String id, String title, Option... options) {
      return of(id, title, List.of(options));
    }

    /** A choice of which the first is the usual one. */
    public static Choice of(String id, String title, List<Option> options) {
      return new Choice(id, title, options, options.get(0).word());
    }

    /** The same with another usual word. */
    public Choice usually(String word) {
      return new Choice(id, title, options, word);
    }

    /** The option with this word. */
    public Optional<Option> option(String word) {
      return options.stream().filter(option -> option.word().equals(word)).findFirst();
    }

    /** All words. */
    public List<String> words() {
      return options.stream().map(Option::word).toList();
    }

    @Override
    public String usualText() {
      return usual;
    }

    @Override
    public String allowedText() {
      return String.join(", ", words());
    }
  }

  /**
   * What can be chosen.
   *
   * @param word what files and commands call it
   * @param title what a form calls it
   */
  record Option(String word, String title) {}

  /**
   * A span of values, both ends included.
   *
   * @param least the least value
   * @param most the greatest value, not below {@code least}
   */
  record Span(double least, double most) {
    /** Whether a value lies within. */
    public boolean contains(double value) {
      return value >= least && value <= most;
    }
  }
}
