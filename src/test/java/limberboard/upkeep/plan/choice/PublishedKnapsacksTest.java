package limberboard.upkeep.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Knapsack problems whose best choice is published (source in {@code knapsack-01.txt}): as they
 * are, and written with precedence and with something to be opened, which must not change the
 * answer.
 */
class PublishedKnapsacksTest {
  /** A problem as it is published. */
  record Published(
      String name, int capacity, List<Integer> weights, List<Integer> profits, long best) {
    static Published of(String line) {
      String[] parts = line.split(";");
      return new Published(
          parts[0].strip(),
          Integer.parseInt(parts[1].strip()),
          numbers(parts[2]),
          numbers(parts[3]),
          Long.parseLong(parts[4].strip()));
    }

    private static List<Integer> numbers(String text) {
      return Stream.of(text.strip().split(" ")).map(Integer::valueOf).toList();
    }
  }

  static List<Published> published() {
    try (InputStream in =
        PublishedKnapsacksTest.class.getResourceAsStream(
            "/limberboard/upkeep/plan/knapsack-01.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .map(Published::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void best(Chores chores, Published problem) {
    DayChoice choice = ChoiceSearch.of(chores);
    assertThat(choice.worth()).as(problem.name()).isEqualTo(problem.best());
    assertThat(choice.isBest()).as("proven for %s: %s", problem.name(), choice).isTrue();
  }

  @ParameterizedTest
  @MethodSource("published")
  void asPublished(Published problem) {
    List<Chore> chores = new ArrayList<>();
    for (int i = 0; i < problem.weights().size(); i++) {
      chores.add(
          new Chore(
              problem.weights().get(i), problem.profits().get(i), Set.of(), Set.of(), 0, 0, 0));
    }
    best(new Chores(chores, List.of(), List.of(problem.capacity())), problem);
  }

  @ParameterizedTest
  @MethodSource("published")
  void withTheWeightInWhatComesBefore(Published problem) {
    List<Chore> chores = new ArrayList<>();
    for (int i = 0; i < problem.weights().size(); i++) {
      chores.add(new Chore(problem.weights().get(i), 0, Set.of(), Set.of(), 0, 0, 0));
      chores.add(new Chore(0, problem.profits().get(i), Set.of(2 * i), Set.of(), 0, 0, 1));
    }
    best(new Chores(chores, List.of(), List.of(problem.capacity())), problem);
  }

  @ParameterizedTest
  @MethodSource("published")
  void withTheWeightInWhatIsOpenedForTwo(Published problem) {
    List<Chore> chores = new ArrayList<>();
    for (int i = 0; i < problem.weights().size(); i++) {
      int half = problem.profits().get(i) / 2;
      int rest = problem.profits().get(i) - half;
      chores.add(new Chore(0, half, Set.of(), Set.of(i), 0, 0, 0));
      chores.add(new Chore(0, rest, Set.of(), Set.of(i), 0, 0, 0));
    }
    best(new Chores(chores, problem.weights(), List.of(problem.capacity())), problem);
  }
}
