package limberboard.boat;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import limberboard.library.page.Model.Choice;
import limberboard.library.value.Condition;
import limberboard.library.value.Range;
import limberboard.library.value.Word;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;

/**
 * Judges conditions for one boat on one day, and says why. Immutable.
 *
 * @param boat the boat
 * @param on the day, which decides the boat's age
 */
public record Fitting(Boat boat, LocalDate on) {

  /** Her log up to the day: what it has after that is not looked at. */
  public List<LogEntry> log() {
    return boat.log().stream().filter(entry -> !entry.date().isAfter(on)).toList();
  }

  /** Whether the condition holds; the same as {@link #judge} finds, without finding the words. */
  public boolean fits(Condition condition) {
    return isFor(condition.model(), boat.model().id())
        && condition.built().map(range -> range.contains(boat.built())).orElse(true)
        && condition.hull().map(this::mayBeHull).orElse(true)
        && condition.fitted().stream().allMatch(boat::has)
        && condition.notFitted().stream().noneMatch(boat::has)
        && isFor(condition.water(), boat.water())
        && isFor(condition.use(), boat.use())
        && isFor(condition.exposure(), boat.exposure())
        && condition.age().map(least -> !on.isBefore(boat.ageFrom().plus(least))).orElse(true)
        && (condition.any().isEmpty() || condition.any().stream().anyMatch(this::fits));
  }

  /** A hull number that nobody knows leaves nothing out. */
  private boolean mayBeHull(Range range) {
    return boat.hull() == NotEntered.NO_HULL || range.contains(boat.hull());
  }

  private static <T> boolean isFor(List<T> asked, T mine) {
    return asked.isEmpty() || asked.contains(mine);
  }

  /** Whether the condition holds, with the reason: the first entry that fails, or all that hold. */
  public Fit judge(Condition condition) {
    List<String> held = new ArrayList<>();
    for (Optional<Fit> part : parts(condition)) {
      if (part.isPresent()) {
        if (!part.get().fits()) {
          return part.get();
        }
        held.add(part.get().reason());
      }
    }
    return new Fit.Yes(String.join(", ", held));
  }

  private List<Optional<Fit>> parts(Condition condition) {
    List<Optional<Fit>> parts = new ArrayList<>();
    parts.add(model(condition.model()));
    parts.add(
        condition.built().map(range -> within(range, boat.built(), n -> "built " + n, "built")));
    parts.add(
        condition
            .hull()
            .map(
                range ->
                    boat.hull() == NotEntered.NO_HULL
                        ? new Fit.Yes("the hull number is not known")
                        : within(range, boat.hull(), n -> "hull number " + n, "hull number")));
    condition.fitted().forEach(choice -> parts.add(Optional.of(fitted(choice))));
    condition.notFitted().forEach(choice -> parts.add(Optional.of(notFitted(choice))));
    parts.add(oneOf(condition.water(), boat.water(), "lies in ", " water"));
    parts.add(oneOf(condition.use(), boat.use(), "used for ", ""));
    parts.add(oneOf(condition.exposure(), boat.exposure(), "", " berth"));
    parts.add(condition.age().map(this::age));
    parts.add(any(condition.any()));
    return parts;
  }

  private Optional<Fit> model(List<String> models) {
    if (models.isEmpty()) {
      return Optional.empty();
    }
    String title = boat.model().title();
    return Optional.of(
        models.contains(boat.model().id())
            ? new Fit.Yes("a " + title)
            : new Fit.No("a " + title + ", and this is for " + named(models)));
  }

  /** Model ids as people say them: {@code tarnwick-26} is the Tarnwick 26. */
  private static String named(List<String> models) {
    return models.stream()
        .map(id -> "the " + Sentences.capital(Sentences.spoken(id)))
        .collect(Collectors.joining(" or "));
  }

  private static Fit within(Range range, int number, IntFunction<String> named, String what) {
    String here = named.apply(number);
    if (range.contains(number)) {
      return new Fit.Yes(here);
    }
    if (range.from().isPresent() && number < range.from().getAsInt()) {
      return new Fit.No(here + ", before " + range.from().getAsInt());
    }
    return new Fit.No(here + ", after " + range.to().orElse(number));
  }

  private Fit fitted(String choice) {
    return boat.has(choice)
        ? new Fit.Yes("has " + titleOf(choice))
        : new Fit.No(hasNot(choice) + since(choice));
  }

  private Fit notFitted(String choice) {
    return boat.has(choice) ? new Fit.No("has " + titleOf(choice)) : new Fit.Yes(hasNot(choice));
  }

  /**
   * Says that a choice is not fitted: {@code has no saildrive}. Where the choice is to have
   * nothing, such as <i>No toilet</i>, it says what the boat has instead.
   */
  private String hasNot(String choice) {
    String title = titleOf(choice);
    return title.startsWith("no ")
        ? "has " + instead(choice).orElse(title.substring("no ".length()))
        : "has no " + title;
  }

  /** What is fitted where a choice might have been. */
  private Optional<String> instead(String choice) {
    return boat.model().details().equipment().stream()
        .filter(equipment -> equipment.choices().stream().anyMatch(c -> c.id().equals(choice)))
        .flatMap(equipment -> equipment.choices().stream())
        .filter(other -> boat.has(other.id()))
        .map(other -> Sentences.lowered(other.title()))
        .findFirst();
  }

  /** Says that a choice came only after this boat was built, or had gone before, if so. */
  private String since(String choice) {
    Optional<Range> years = choice(choice).flatMap(Choice::built);
    if (years.isEmpty() || years.get().contains(boat.built())) {
      return "";
    }
    Range range = years.get();
    if (range.from().isPresent() && boat.built() < range.from().getAsInt()) {
      return " (built " + boat.built() + ", before it came in " + range.from().getAsInt() + ")";
    }
    return " (built " + boat.built() + ", after its last year " + range.to().orElse(0) + ")";
  }

  private String titleOf(String choice) {
    return choice(choice)
        .map(found -> Sentences.lowered(found.title()))
        .orElseGet(() -> Sentences.spoken(choice));
  }

  private Optional<Choice> choice(String id) {
    return boat.model().details().equipment().stream()
        .flatMap(equipment -> equipment.choices().stream())
        .filter(found -> found.id().equals(id))
        .findFirst();
  }

  private static <W extends Word> Optional<Fit> oneOf(
      List<W> words, W mine, String before, String after) {
    if (words.isEmpty()) {
      return Optional.empty();
    }
    String here = before + mine.spoken() + after;
    List<String> asked = words.stream().map(Word::spoken).toList();
    return Optional.of(
        words.contains(mine)
            ? new Fit.Yes(here)
            : new Fit.No(here + ", not " + String.join(" or ", asked) + after));
  }

  private Fit age(Period least) {
    LocalDate reached = boat.ageFrom().plus(least);
    String asked = TimeWords.period(least);
    return on.isBefore(reached)
        ? new Fit.No("younger than " + asked)
        : new Fit.Yes("at least " + asked + " old");
  }

  private Optional<Fit> any(List<Condition> alternatives) {
    if (alternatives.isEmpty()) {
      return Optional.empty();
    }
    List<String> reasons = new ArrayList<>();
    for (Condition alternative : alternatives) {
      Fit fit = judge(alternative);
      if (fit.fits()) {
        return Optional.of(fit);
      }
      reasons.add(fit.reason());
    }
    return Optional.of(new Fit.No(String.join("; ", reasons)));
  }
}
