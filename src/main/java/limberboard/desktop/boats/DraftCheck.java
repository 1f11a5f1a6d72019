package limberboard.desktop.boats;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogDay;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Range;
import limberboard.words.DayText;

/**
 * Says what in a form cannot be saved, and what would be right.
 *
 * @param library the models
 * @param boats the boats there are
 * @param today the day that it is
 * @param own id of the boat that is being changed; empty for a new one
 */
record DraftCheck(Library library, List<Boat> boats, LocalDate today, Optional<String> own) {
  private static final int LONGEST_NAME = 60;

  /** Field to what is wrong with it; empty when everything can be saved. */
  Map<Field, String> problems(Draft draft) {
    Map<Field, String> problems = new EnumMap<>(Field.class);
    name(draft).ifPresent(wrong -> problems.put(Field.NAME, wrong));
    Optional<Page<Model>> model = library.model(draft.text(Field.MODEL));
    if (model.isEmpty()) {
      problems.put(Field.MODEL, "Choose the model; it decides what can be fitted.");
    }
    hull(draft, model).ifPresent(wrong -> problems.put(Field.HULL, wrong));
    built(draft, model).ifPresent(wrong -> problems.put(Field.BUILT, wrong));
    launched(draft).ifPresent(wrong -> problems.put(Field.LAUNCHED, wrong));
    bought(draft).ifPresent(wrong -> problems.put(Field.BOUGHT, wrong));
    season(draft, problems);
    return problems;
  }

  private static Optional<String> name(Draft draft) {
    String name = draft.text(Field.NAME).strip();
    if (name.isEmpty()) {
      return Optional.of("Write what the boat is called.");
    }
    return name.length() > LONGEST_NAME
        ? Optional.of("Write a name of at most " + LONGEST_NAME + " letters.")
        : Optional.empty();
  }

  private Optional<String> hull(Draft draft, Optional<Page<Model>> model) {
    Optional<Integer> hull = draft.number(Field.HULL).filter(number -> number > 0);
    if (hull.isEmpty()) {
      return Optional.of("Write the hull number: a whole number, 1 or more.");
    }
    Optional<Range> hulls = model.flatMap(page -> page.details().hulls());
    if (hulls.isPresent() && !hulls.get().contains(hull.get())) {
      return Optional.of("Hull numbers of this model are " + spoken(hulls.get()) + ".");
    }
    return boats.stream()
        .filter(boat -> !Optional.of(boat.id()).equals(own))
        .filter(boat -> model.map(page -> page.id().equals(boat.model().id())).orElse(false))
        .filter(boat -> boat.hull() == hull.get())
        .findFirst()
        .map(boat -> "This is the hull number of " + boat.name() + "; each boat has its own.");
  }

  private static Optional<String> built(Draft draft, Optional<Page<Model>> model) {
    Optional<Integer> year = draft.number(Field.BUILT);
    if (year.isEmpty()) {
      return Optional.of("Write the year it was built in, such as 2016.");
    }
    return model
        .map(page -> page.details().built())
        .filter(years -> !years.contains(year.get()))
        .map(years -> "This model was built " + spoken(years) + ".");
  }

  private static String spoken(Range range) {
    if (range.from().isPresent() && range.to().isPresent()) {
      return range.from().getAsInt() + " to " + range.to().getAsInt();
    }
    return range.from().isPresent()
        ? "from " + range.from().getAsInt() + " on"
        : "up to " + range.to().orElse(0);
  }

  private static Optional<String> launched(Draft draft) {
    String text = draft.text(Field.LAUNCHED);
    if (text.isBlank()) {
      return Optional.empty();
    }
    Optional<LocalDate> day = DayText.withYear(text);
    if (day.isEmpty()) {
      return Optional.of("Write the day as 20 May 2014 or 2014-05-20, or leave it empty.");
    }
    if (!LogDay.isYear(day.get().getYear())) {
      return Optional.of(
          "Write a year from " + LogDay.FIRST_YEAR + " to " + LogDay.LAST_YEAR + ".");
    }
    return draft
        .number(Field.BUILT)
        .filter(year -> day.get().getYear() < year)
        .map(year -> "A boat built in " + year + " was not afloat before that.");
  }

  private Optional<String> bought(Draft draft) {
    String text = draft.text(Field.BOUGHT);
    if (text.isBlank()) {
      return Optional.empty();
    }
    Optional<LocalDate> day = DayText.withYear(text);
    if (day.isEmpty()) {
      return Optional.of(
          firstDay(text)
              .map(
                  first ->
                      "A day is needed here. Where you know no more than this, write its first day,"
                          + " "
                          + DayText.written(first)
                          + ".")
              .orElse(
                  "Write the day as 3 Oct 2026 or 2026-10-03, or leave it empty if she came new"
                      + " from the yard."));
    }
    if (day.get().isAfter(today)) {
      return Optional.of("That lies in the future; write the day on which she became yours.");
    }
    return draft
        .number(Field.BUILT)
        .filter(year -> day.get().getYear() < year)
        .map(year -> "A boat built in " + year + " was not sold on before that.");
  }

  /** The first day of what is a year or a month of one; empty for anything else. */
  private static Optional<LocalDate> firstDay(String text) {
    String plain = text.strip();
    return DayText.withYear(plain.matches("\\d{4}") ? "1 Jan " + plain : "1 " + plain)
        .or(() -> DayText.withYear(plain + "-1"));
  }

  private static void season(Draft draft, Map<Field, String> problems) {
    String from = draft.text(Field.SEASON_FROM);
    String to = draft.text(Field.SEASON_TO);
    if (from.isBlank() && to.isBlank()) {
      return;
    }
    if (DayText.monthDay(from).isEmpty()) {
      problems.put(Field.SEASON_FROM, "Write the day as 15 April, or leave both empty.");
    }
    if (DayText.monthDay(to).isEmpty()) {
      problems.put(Field.SEASON_TO, "Write the day as 15 October, or leave both empty.");
    }
  }
}
