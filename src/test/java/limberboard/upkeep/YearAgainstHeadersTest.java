package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.NotEntered;
import limberboard.library.Library;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * A year's hours against a sum of the headers as they stand in the files, read without the
 * library's reader: of each page that only counts by the calendar and stands by itself, its minutes
 * by its period, and of each round of yearly work its own minutes and those within it, in
 * proportion to the boat's size where the page says for which size they stand. The rest of a year
 * (factors, seasons, meters, resets, looks again) is not compared here.
 */
@ContentTest
class YearAgainstHeadersTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);
  private static final int SEASONS = 12;
  private static final double MONTHS = 12;

  /** One doing more or less in these seasons, by where in its period the boat stands. */
  private static final double ONE_DOING = 1.0 / SEASONS + 1e-9;

  private static final double HAIR = 1e-9;

  private static final Map<String, Map<String, Object>> HEADERS = new TreeMap<>();
  private static final Map<String, Map<String, Object>> MODELS = new TreeMap<>();

  /** What is done within a round, with its minutes there. */
  private static final Map<String, Map<String, Object>> IN_ROUND = new HashMap<>();

  @BeforeAll
  static void read() throws IOException {
    read("procedures", HEADERS);
    read("models", MODELS);
    HEADERS.forEach(
        (id, header) ->
            list(header.get("round")).forEach(each -> IN_ROUND.put((String) each.get("do"), each)));
  }

  private static void read(String folder, Map<String, Map<String, Object>> into)
      throws IOException {
    try (Stream<Path> files = Files.list(Path.of("articles", folder))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".md")).toList()) {
        String header = Files.readString(file).split("(?m)^---\\s*$", 3)[1];
        Map<String, Object> read = new Yaml(new SafeConstructor(new LoaderOptions())).load(header);
        into.put(file.getFileName().toString().replace(".md", ""), read);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Object value) {
    return value == null ? List.of() : (List<Map<String, Object>>) value;
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object value) {
    return value == null ? Map.of() : (Map<String, Object>) value;
  }

  private static Boat boat(String id) {
    return NotEntered.of(id, library()).orElseThrow();
  }

  private static Library library() {
    return Demo.workspace().library();
  }

  /**
   * How often a year the calendar alone brings this work; nothing where anything else has a say:
   * other limits, factors, an age or an event to begin with, or other work that resets it.
   */
  private static Optional<Double> timesByCalendar(String id) {
    Map<String, Object> interval = map(HEADERS.get(id).get("interval"));
    boolean calendarOnly =
        interval.containsKey("every")
            && Stream.of("seasons", "engine-hours", "uses", "factors", "from-age", "from-event")
                .noneMatch(interval::containsKey);
    boolean reset =
        HEADERS.values().stream()
            .anyMatch(each -> each.get("resets") instanceof List<?> all && all.contains(id));
    return calendarOnly && !reset
        ? Optional.of(MONTHS / Period.parse((String) interval.get("every")).toTotalMonths())
        : Optional.empty();
  }

  private static int minutes(String id, boolean withinRound, String model) {
    Map<String, Object> header = HEADERS.get(id);
    if (withinRound && IN_ROUND.get(id).get("minutes") instanceof Integer within) {
      return sized(within, header, model);
    }
    if (header.get("appointment") != null) {
      return (int) map(header.get("appointment")).get("minutes");
    }
    boolean owners = !List.of("yard", "licensed").contains(header.get("skill"));
    return owners ? sized((int) header.get("minutes"), header, model) : 30;
  }

  /** Minutes in proportion to the model's size, from twenty on rounded to five. */
  private static int sized(int minutes, Map<String, Object> header, String model) {
    Map<String, Object> size = map(header.get("minutes-for"));
    Object is = map(MODELS.get(model).get("measures")).get(size.get("measure"));
    if (size.isEmpty() || is == null) {
      return minutes;
    }
    String[] here = is.toString().split(" ");
    String[] of = size.get("of").toString().split(" ");
    assertThat(List.of(here).subList(1, here.length)).isEqualTo(List.of(of).subList(1, of.length));
    double exact = minutes * Double.parseDouble(here[0]) / Double.parseDouble(of[0]);
    return (int) (exact < 20 ? Math.round(exact) : Math.round(exact / 5) * 5);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a tarnwick-30 of 2017",
        "a tarnwick-34 of 2017",
        "a tarnwick-26 of 2017",
        "a tarnwick-21 of 2017 in fresh water"
      })
  void workByItselfComesAndTakesWhatItsHeaderSays(String id) {
    Fitting fitting = new Fitting(boat(id), DAY);
    YearOfWork year = YearOfWork.of(Demo.upkeep(boat(id), DAY), SEASONS);
    int looked = 0;
    for (YearOfWork.Line line : year.lines()) {
      String page = line.work().id();
      Optional<Double> times = timesByCalendar(page).filter(each -> each <= 1);
      boolean alone =
          !IN_ROUND.containsKey(page)
              && list(HEADERS.get(page).get("round")).isEmpty()
              && HEADERS.get(page).get("look-again") == null;
      if (times.isPresent() && alone) {
        assertThat(fitting.fits(line.work().head().fits())).as(page).isTrue();
        assertThat(line.times()).as(page).isCloseTo(times.get(), within(ONE_DOING));
        assertThat(line.minutes())
            .as(page)
            .isCloseTo(line.times() * minutes(page, false, boat(id).model().id()), within(HAIR));
        looked++;
      }
    }
    assertThat(looked).as("lines that were looked at").isPositive();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a tarnwick-30 of 2017", "a tarnwick-34 of 2017"})
  void aRoundOfYearlyWorkTakesItsOwnMinutesAndThoseWithinIt(String id) {
    YearOfWork year = YearOfWork.of(Demo.upkeep(boat(id), DAY), SEASONS);
    Fitting fitting = new Fitting(boat(id), DAY);
    String model = boat(id).model().id();
    int looked = 0;
    for (YearOfWork.Line line : year.lines()) {
      String page = line.work().id();
      List<String> with =
          list(HEADERS.get(page).get("round")).stream()
              .map(each -> (String) each.get("do"))
              .filter(each -> fitting.fits(library().procedure(each).orElseThrow().head().fits()))
              .toList();
      boolean yearly =
          !with.isEmpty()
              && Stream.concat(Stream.of(page), with.stream())
                  .allMatch(
                      each ->
                          timesByCalendar(each).filter(times -> times == 1).isPresent()
                              && HEADERS.get(each).get("look-again") == null);
      if (yearly) {
        int sum = with.stream().mapToInt(each -> minutes(each, true, model)).sum();
        assertThat(line.minutes()).as(page).isEqualTo(minutes(page, false, model) + sum);
        looked++;
      }
    }
    assertThat(looked).as("rounds of yearly work").isPositive();
  }
}
