package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import limberboard.library.value.Range;
import limberboard.library.value.Word;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;

/** Conditions in words: which boats something is for. Immutable. */
public final class ConditionWords {
  private static final String BOATS = "boats";
  private static final String NO = "no ";

  private final Library library;

  ConditionWords(Library library) {
    this.library = library;
  }

  /** Which boats: {@code boats with saildrive, built from 2016 on}; {@code all boats} if empty. */
  String of(Condition condition) {
    List<String> parts = new ArrayList<>();
    if (!condition.fitted().isEmpty()) {
      parts.add("with " + Sentences.list(titles(condition.fitted()), "and"));
    }
    List<String> without = titles(condition.notFitted());
    List<String> lacked = without.stream().filter(title -> !isNothing(title)).toList();
    if (!lacked.isEmpty()) {
      parts.add("without " + Sentences.list(lacked, "or"));
    }
    without.stream()
        .filter(ConditionWords::isNothing)
        .forEach(title -> parts.add("with " + title.substring(NO.length())));
    condition.built().ifPresent(range -> parts.add("built " + years(range)));
    condition.hull().ifPresent(range -> parts.add("with hull number " + years(range)));
    if (!condition.water().isEmpty()) {
      parts.add("lying in " + words(condition.water()) + " water");
    }
    if (!condition.use().isEmpty()) {
      parts.add("used for " + words(condition.use()));
    }
    if (!condition.exposure().isEmpty()) {
      parts.add("in a berth that is " + words(condition.exposure()));
    }
    condition.age().ifPresent(age -> parts.add("at least " + TimeWords.period(age) + " old"));
    if (!condition.any().isEmpty()) {
      parts.add(Sentences.list(condition.any().stream().map(this::bare).toList(), "or"));
    }
    return (models(condition.model()) + " " + String.join(", ", parts)).strip();
  }

  /** An alternative within a condition, without the word for boats where it names no model. */
  private String bare(Condition condition) {
    String words = of(condition);
    return words.startsWith(BOATS + " ") ? words.substring(BOATS.length() + 1) : words;
  }

  private String models(List<String> ids) {
    return ids.isEmpty()
        ? BOATS
        : Sentences.list(
            ids.stream().map(id -> library.page(id).map(Page::title).orElse(id)).toList(), "and");
  }

  private List<String> titles(List<String> choices) {
    return choices.stream().map(this::title).toList();
  }

  /** Whether a choice is to have nothing: to be without no toilet is to have one. */
  private static boolean isNothing(String title) {
    return title.startsWith(NO);
  }

  /** What a choice of equipment is called, within a sentence. */
  String title(String choice) {
    return library.all(Model.class).stream()
        .flatMap(model -> model.details().equipment().stream())
        .flatMap(equipment -> equipment.choices().stream())
        .filter(found -> found.id().equals(choice))
        .findFirst()
        .map(found -> Sentences.lowered(found.title()))
        .orElseGet(() -> Sentences.spoken(choice));
  }

  /** What a place is called on this boat, or on any model that has it. */
  String zone(String id, Optional<Fitting> fitting) {
    return fitting
        .flatMap(known -> known.boat().model().details().zone(id))
        .or(
            () ->
                library.all(Model.class).stream()
                    .flatMap(model -> model.details().zone(id).stream())
                    .findFirst())
        .map(zone -> Sentences.lowered(zone.title()))
        .orElseGet(() -> Sentences.spoken(id));
  }

  private static String words(List<? extends Word> words) {
    return Sentences.list(words.stream().map(Word::spoken).toList(), "or");
  }

  /** A range in words: {@code 2012–2018}, {@code from 2016 on}, {@code until 2015}. */
  static String years(Range range) {
    Optional<Integer> from = boxed(range.from());
    Optional<Integer> to = boxed(range.to());
    if (from.isPresent() && to.isPresent()) {
      return from.equals(to) ? from.get().toString() : from.get() + "–" + to.get();
    }
    return from.map(year -> "from " + year + " on")
        .or(() -> to.map(year -> "until " + year))
        .orElse("at any time");
  }

  private static Optional<Integer> boxed(OptionalInt number) {
    return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
  }
}
