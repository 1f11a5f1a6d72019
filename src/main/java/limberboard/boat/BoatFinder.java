package limberboard.boat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/**
 * Finds the boat that words mean: by name, also misspelt, by hull number, by model and year. A boat
 * that nobody has entered is made of her model, her year and what is said to be fitted.
 *
 * <p>Words that are meant to name one boat go to {@link #named}, which never guesses; a text in
 * which a boat may be mentioned goes to {@link #in}, which offers. Immutable.
 */
public final class BoatFinder {
  private static final Pattern HULL =
      Pattern.compile(
          "(?i)(?:\\bhull(?:\\s*(?:no\\.?|number|nr\\.?|#))?|\\bno\\.|\\bnumber|\\bnr\\.|#)"
              + "\\s*:?\\s*(\\d{1,5})\\b");
  private static final Pattern YEAR = Pattern.compile("(?:19|20)\\d\\d");
  private static final Pattern PARTS =
      Pattern.compile("[,;]|\\b(?:with|and|plus|in|for)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern ARTICLE =
      Pattern.compile("\\s*an?\\s.*", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
  private static final Set<String> HULL_WORDS = Set.of("hull", "number", "no", "nr");
  private static final int FEW_WORDS = 8;
  private static final int MOST_OFFERED = 5;
  private final Workspace workspace;
  private final int lastYear;

  /**
   * A finder.
   *
   * @param workspace boats and models
   * @param lastYear the last year in which a boat may have been built
   */
  public BoatFinder(Workspace workspace, int lastYear) {
    this.workspace = workspace;
    this.lastYear = lastYear;
  }

  /** What words come to that are meant to name one boat. */
  public sealed interface Answer {}

  /**
   * They name this boat and no other.
   *
   * @param boat the boat
   */
  public record One(Boat boat) implements Answer {}

  /**
   * They may mean several.
   *
   * @param boats the boats, of which one at most has not been entered
   */
  public record Several(List<Boat> boats) implements Answer {
    /** Copies the list. */
    public Several {
      boats = List.copyOf(boats);
    }
  }

  /**
   * They name none.
   *
   * @param why what is missing or wrong; empty when there is nothing to be said
   */
  public record None(String why) implements Answer {}

  /** The boat that these words name: an id, a name, a hull number, or a model with a year. */
  public Answer named(String words) {
    Optional<Boat> byId = workspace.boat(words.strip());
    if (byId.isPresent()) {
      return new One(byId.get());
    }
    List<Boat> byName = named(SaidWords.of(words));
    if (byName.size() == 1) {
      return new One(byName.get(0));
    }
    OptionalInt hull = hull(words);
    if (byName.isEmpty() && hull.isPresent()) {
      return answer(
          ofHull(hull.getAsInt(), words), "no boat has the hull number " + hull(words).getAsInt());
    }
    return byName.isEmpty() ? byModel(words) : new Several(byName);
  }

  private static Answer answer(List<Boat> boats, String otherwise) {
    return switch (boats.size()) {
      case 0 -> new None(otherwise);
      case 1 -> new One(boats.get(0));
      default -> new Several(boats);
    };
  }

  private Answer byModel(String words) {
    Optional<SaidModel> said = SaidModel.in(SaidWords.of(words), workspace.library());
    if (said.isEmpty()) {
      return new None("");
    }
    Page<Model> model = said.get().model();
    OptionalInt year = year(said.get().rest());
    if (year.isEmpty()) {
      return new None(
          "say the year in which she was built: “a "
              + model.title()
              + " of "
              + model.details().built().from().orElse(lastYear)
              + "”");
    }
    if (!model.details().built().contains(year.getAsInt()) || year.getAsInt() > lastYear) {
      return new None("no " + model.title() + " was built in " + year.getAsInt());
    }
    SaidChoices choices = new SaidChoices(model, year.getAsInt());
    choices.take(parts(words));
    if (choices.wrong().isPresent()) {
      return new None(choices.wrong().get());
    }
    List<Boat> all = new ArrayList<>();
    if (!ARTICLE.matcher(words).matches()) {
      all.addAll(ofModel(model, year));
    }
    all.add(choices.boat());
    return answer(all, "");
  }

  /** What was said besides model and year, part by part. */
  private List<SaidWords> parts(String words) {
    return Stream.of(PARTS.split(words))
        .map(SaidWords::of)
        .map(part -> SaidModel.in(part, workspace.library()).map(SaidModel::rest).orElse(part))
        .map(BoatFinder::withoutYears)
        .toList();
  }

  private static SaidWords withoutYears(SaidWords said) {
    return new SaidWords(
        said.all().stream().filter(word -> !YEAR.matcher(word).matches()).toList());
  }

  /**
   * The boats that a text may speak of, the surest first, at most five. They are to be offered, not
   * chosen: a boat may be mentioned only in passing.
   */
  public List<Boat> in(String text) {
    Map<String, Boat> found = new LinkedHashMap<>();
    SaidWords said = SaidWords.of(text);
    boolean few = said.size() <= FEW_WORDS;
    add(found, named(said));
    OptionalInt hull = hull(text);
    if (hull.isPresent()) {
      add(found, ofHull(hull.getAsInt(), text));
    }
    SaidModel.in(said, workspace.library()).ifPresent(model -> add(found, of(model, text, few)));
    if (few) {
      add(found, begun(said));
    }
    if (found.isEmpty()) {
      add(found, misspelt(said));
    }
    return found.values().stream().limit(MOST_OFFERED).toList();
  }

  /** Whether a text says nothing but which boat is meant. */
  public boolean saysNothingElse(String text) {
    SaidWords said = SaidWords.of(text);
    SaidWords rest = said;
    for (Boat boat : named(said)) {
      SaidWords name = SaidWords.of(boat.name());
      int at = rest.indexOf(name);
      rest = at < 0 ? rest : rest.without(at, at + name.size());
    }
    rest = SaidModel.in(rest, workspace.library()).map(SaidModel::rest).orElse(rest);
    boolean hull = hull(text).isPresent();
    List<String> left =
        withoutYears(rest).without(SaidChoices.SAYS_NOTHING).all().stream()
            .filter(word -> !(hull && (HULL_WORDS.contains(word) || word.matches("\\d+"))))
            .toList();
    return left.isEmpty()
        || byModel(text) instanceof One
        || (left.size() == said.size() && said.size() <= 2 && !boatsLike(said).isEmpty());
  }

  private List<Boat> boatsLike(SaidWords said) {
    List<Boat> like = new ArrayList<>(begun(said));
    like.addAll(misspelt(said));
    return like;
  }

  private static void add(Map<String, Boat> found, List<Boat> boats) {
    boats.forEach(boat -> found.putIfAbsent(boat.id(), boat));
  }

  private List<Boat> of(SaidModel said, String text, boolean few) {
    OptionalInt year = year(said.rest());
    if (year.isEmpty()) {
      return said.rest().isEmpty() ? ofModel(said.model(), year) : List.of();
    }
    List<Boat> boats = new ArrayList<>(ofModel(said.model(), year));
    if (said.model().details().built().contains(year.getAsInt()) && year.getAsInt() <= lastYear) {
      SaidChoices choices = new SaidChoices(said.model(), year.getAsInt());
      if (few) {
        choices.take(parts(text));
      }
      if (choices.wrong().isEmpty() || !few) {
        boats.add(choices.boat());
      }
    }
    return boats;
  }

  /** The boats whose whole name stands in what was said, those of the longest names first. */
  private List<Boat> named(SaidWords said) {
    return workspace.boats().stream()
        .filter(boat -> said.indexOf(SaidWords.of(boat.name())) >= 0)
        .sorted(Comparator.comparingInt((Boat boat) -> boat.name().length()).reversed())
        .toList();
  }

  /** The boats whose name begins as somebody has begun to type. */
  private List<Boat> begun(SaidWords said) {
    String typed = String.join(" ", said.all());
    return typed.length() < 2
        ? List.of()
        : workspace.boats().stream()
            .filter(boat -> String.join(" ", SaidWords.of(boat.name()).all()).startsWith(typed))
            .toList();
  }

  private List<Boat> misspelt(SaidWords said) {
    return workspace.boats().stream()
        .filter(
            boat ->
                SaidWords.of(boat.name()).all().stream()
                    .allMatch(part -> said.all().stream().anyMatch(w -> SaidWords.isLike(w, part))))
        .toList();
  }

  private List<Boat> ofHull(int hull, String text) {
    Optional<String> model =
        SaidModel.in(SaidWords.of(text), workspace.library()).map(said -> said.model().id());
    return workspace.boats().stream()
        .filter(boat -> boat.hull() == hull)
        .filter(boat -> model.map(boat.model().id()::equals).orElse(true))
        .toList();
  }

  private List<Boat> ofModel(Page<Model> model, OptionalInt year) {
    return workspace.boats().stream()
        .filter(boat -> boat.model().id().equals(model.id()))
        .filter(boat -> year.isEmpty() || boat.built() == year.getAsInt())
        .toList();
  }

  /** The hull number said to be one, or the number that is all that was said besides a model. */
  private OptionalInt hull(String text) {
    Matcher hull = HULL.matcher(text);
    if (hull.find()) {
      return OptionalInt.of(Integer.parseInt(hull.group(1)));
    }
    SaidWords said = SaidWords.of(text);
    SaidWords rest = SaidModel.in(said, workspace.library()).map(SaidModel::rest).orElse(said);
    boolean number = rest.size() == 1 && rest.all().get(0).matches("\\d{1,5}");
    boolean year = number && rest.size() < said.size() && YEAR.matcher(rest.all().get(0)).matches();
    return number && !year
        ? OptionalInt.of(Integer.parseInt(rest.all().get(0)))
        : OptionalInt.empty();
  }

  private static OptionalInt year(SaidWords said) {
    return said.all().stream()
        .filter(word -> YEAR.matcher(word).matches())
        .mapToInt(Integer::parseInt)
        .findFirst();
  }
}
