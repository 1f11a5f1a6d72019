package limberboard.boat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Page;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import limberboard.library.value.Word;
import limberboard.words.Sentences;

/**
 * Boats that nobody has entered: known by model, year and what is fitted, without a file. Such a
 * boat's id says all there is to know of it, so that whoever keeps the id keeps the boat: {@code a
 * tarnwick-30 of 2017 with mast-carbon in fresh water for charter}. No folder has such a name.
 */
public final class NotEntered {
  /** The hull number of a boat whose hull number nobody knows. */
  public static final int NO_HULL = 0;

  private static final String CHOICES = "[^ ]+(?: and [^ ]+)*";
  private static final Pattern ID =
      Pattern.compile(
          "a ([^ ]+) of (\\d{4})(?: with ("
              + CHOICES
              + "))?(?: in ([a-z]+) water)?"
              + "(?: for ([a-z-]+))?");

  private NotEntered() {}

  /** Whether this is the id of a boat that nobody has entered. */
  public static boolean isId(String id) {
    return ID.matcher(id).matches();
  }

  /**
   * The boat that an id describes.
   *
   * @return empty when the id is another boat's, or when the library has no such model or choice
   */
  public static Optional<Boat> of(String id, Library library) {
    Matcher said = ID.matcher(id);
    if (!said.matches()) {
      return Optional.empty();
    }
    Optional<Page<Model>> model = library.model(said.group(1));
    Optional<Map<String, String>> choices =
        model.flatMap(page -> choices(page.details(), said.group(3)));
    Optional<Water> water = word(Water.values(), said.group(4), Water.SALT);
    Optional<Use> use = word(Use.values(), said.group(5), Use.PRIVATE);
    if (choices.isEmpty() || water.isEmpty() || use.isEmpty()) {
      return Optional.empty();
    }
    int year = Integer.parseInt(said.group(2));
    return Optional.of(boat(model.get(), year, choices.get(), water.get(), use.get()));
  }

  private static Optional<Map<String, String>> choices(Model model, String said) {
    Map<String, String> found = new LinkedHashMap<>();
    if (said == null) {
      return Optional.of(found);
    }
    for (String choice : said.split(" and ")) {
      Optional<Model.Equipment> equipment =
          model.equipment().stream()
              .filter(each -> each.choices().stream().anyMatch(c -> c.id().equals(choice)))
              .findFirst();
      if (equipment.isEmpty()) {
        return Optional.empty();
      }
      found.put(equipment.get().id(), choice);
    }
    return Optional.of(found);
  }

  private static <W extends Word> Optional<W> word(W[] words, String said, W usual) {
    return said == null
        ? Optional.of(usual)
        : Stream.of(words).filter(word -> word.word().equals(said)).findFirst();
  }

  /**
   * A boat with what the yard usually fitted in her year, except for what is said to be fitted.
   *
   * @param model her model's page
   * @param year the year she was built
   * @param fitted equipment id to choice id, where it is known
   * @param water where she lies
   * @param use what she is used for
   */
  public static Boat boat(
      Page<Model> model, int year, Map<String, String> fitted, Water water, Use use) {
    Map<String, String> usual = model.details().usualEquipment(year);
    Map<String, String> equipment = new LinkedHashMap<>(usual);
    equipment.putAll(fitted);
    List<Choice> other =
        model.details().equipment().stream()
            .flatMap(each -> each.choices().stream())
            .filter(choice -> equipment.containsValue(choice.id()))
            .filter(choice -> !usual.containsValue(choice.id()))
            .toList();
    String surroundings =
        (water == Water.SALT ? "" : " in " + water.word() + " water")
            + (use == Use.PRIVATE ? "" : " for " + use.word());
    return new Boat(
        "a " + model.id() + " of " + year + with(other.stream().map(Choice::id)) + surroundings,
        model.title()
            + " of "
            + year
            + with(other.stream().map(choice -> Sentences.lowered(choice.title())))
            + Sentences.spoken(surroundings),
        model,
        NO_HULL,
        year,
        Optional.empty(),
        use,
        water,
        Exposure.USUAL,
        equipment,
        Optional.empty(),
        "",
        List.of());
  }

  private static String with(Stream<String> choices) {
    String all = choices.collect(Collectors.joining(" and "));
    return all.isEmpty() ? "" : " with " + all;
  }
}
