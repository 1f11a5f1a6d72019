package limberboard.boat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/** Reads what is fitted to a boat, where she lies and what she is used for, from words. */
final class SaidChoices {
  /** Words that say nothing of a boat. */
  static final Set<String> SAYS_NOTHING =
      Set.of(
          "a", "an", "the", "of", "from", "built", "in", "year", "her", "has", "have", "fitted",
          "boat", "is", "with", "and", "on", "for", "used", "lies", "lying", "it", "s", "which");

  private static final Map<String, Water> WATERS =
      Map.of(
          "fresh water", Water.FRESH,
          "lake", Water.FRESH,
          "brackish water", Water.BRACKISH,
          "brackish", Water.BRACKISH,
          "salt water", Water.SALT,
          "sea water", Water.SALT);
  private static final Map<String, Use> USES =
      Map.of(
          "charter", Use.CHARTER,
          "chartered", Use.CHARTER,
          "club racing", Use.CLUB_RACING,
          "racing", Use.CLUB_RACING,
          "sailing school", Use.SAILING_SCHOOL,
          "school", Use.SAILING_SCHOOL,
          "private", Use.PRIVATE,
          "private use", Use.PRIVATE);

  private final Page<Model> model;
  private final int year;
  private final Map<String, String> fitted = new LinkedHashMap<>();
  private Water water = Water.SALT;
  private Use use = Use.PRIVATE;
  private Optional<String> wrong = Optional.empty();

  SaidChoices(Page<Model> model, int year) {
    this.model = model;
    this.year = year;
  }

  /**
   * Takes what was said besides model and year.
   *
   * @param parts what was said, between commas and between "with" and "and"
   */
  void take(List<SaidWords> parts) {
    for (SaidWords part : parts) {
      SaidWords words = part.without(SAYS_NOTHING);
      if (!words.isEmpty() && wrong.isEmpty()) {
        takePart(words);
      }
    }
  }

  /** What cannot be understood or was not to be had; empty when all is well. */
  Optional<String> wrong() {
    return wrong;
  }

  /** The boat. */
  Boat boat() {
    return NotEntered.boat(model, year, fitted, water, use);
  }

  private void takePart(SaidWords words) {
    String spoken = String.join(" ", words.all());
    if (WATERS.containsKey(spoken)) {
      water = WATERS.get(spoken);
    } else if (USES.containsKey(spoken)) {
      use = USES.get(spoken);
    } else {
      takeChoice(words, spoken);
    }
  }

  private record Candidate(Equipment equipment, Choice choice, int unsaid) {}

  private void takeChoice(SaidWords words, String spoken) {
    List<Candidate> candidates = new ArrayList<>();
    for (Equipment equipment : model.details().equipment()) {
      for (Choice choice : equipment.choices()) {
        unsaid(words, equipment, choice)
            .ifPresent(unsaid -> candidates.add(new Candidate(equipment, choice, unsaid)));
      }
    }
    int least = candidates.stream().map(Candidate::unsaid).min(Comparator.naturalOrder()).orElse(0);
    boolean vague =
        least > 0 && candidates.stream().map(Candidate::equipment).distinct().count() > 1;
    List<Candidate> best = candidates.stream().filter(c -> vague || c.unsaid() == least).toList();
    if (best.isEmpty()) {
      wrong = Optional.of(unknown(spoken));
    } else if (best.size() > 1) {
      wrong =
          Optional.of(
              "“" + spoken + "” may mean " + titles(best.stream().map(Candidate::choice).toList()));
    } else {
      fit(best.get(0));
    }
  }

  private void fit(Candidate found) {
    Choice choice = found.choice();
    if (choice.built().flatMap(range -> last(range.to())).filter(to -> to < year).isPresent()) {
      wrong =
          Optional.of(
              "“"
                  + choice.title()
                  + "” was no longer to be had in "
                  + year
                  + "; "
                  + titles(found.equipment().fittable(year))
                  + " was");
    } else {
      fitted.put(found.equipment().id(), choice.id());
    }
  }

  private static Optional<Integer> last(OptionalInt to) {
    return to.isPresent() ? Optional.of(to.getAsInt()) : Optional.empty();
  }

  private String unknown(String spoken) {
    return "nothing on a "
        + model.title()
        + " is called “"
        + spoken
        + "”; what can be chosen: "
        + titles(
            model.details().equipment().stream()
                .filter(equipment -> equipment.choices().size() > 1)
                .flatMap(equipment -> equipment.choices().stream())
                .toList());
  }

  private static String titles(List<Choice> choices) {
    return choices.stream()
        .map(choice -> choice.title().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(", "));
  }

  /** How many words of a choice were not said; empty when something else was said. */
  private static Optional<Integer> unsaid(SaidWords words, Equipment equipment, Choice choice) {
    List<String> title = SaidWords.of(choice.title()).all();
    List<String> known = new ArrayList<>(title);
    known.addAll(SaidWords.of(choice.id()).all());
    known.addAll(SaidWords.of(equipment.title()).all());
    for (String word : words.all()) {
      String wanted = word.equals("without") ? "no" : word;
      if (known.stream().noneMatch(each -> each.equals(wanted) || SaidWords.isLike(wanted, each))) {
        return Optional.empty();
      }
    }
    boolean negated = title.contains("no") || SaidWords.of(choice.id()).all().contains("none");
    boolean saidNo = words.all().stream().anyMatch(w -> w.equals("no") || w.equals("without"));
    return negated == saidNo || words.all().contains("none")
        ? Optional.of((int) title.stream().filter(each -> !words.all().contains(each)).count())
        : Optional.empty();
  }
}
