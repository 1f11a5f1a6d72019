package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class DescendingTest {

  @Property(tries = 200, seed = "1945", edgeCases = EdgeCasesMode.NONE)
  void sortsLikeTheStandardLibraryAndKeepsEqualsInOrder(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(min = 0, max = 100) int count) {
    Random random = new Random(seed);
    double[] keys = random.ints(count, 0, 20).asDoubleStream().toArray();
    int[] items = IntStream.range(0, count).toArray();
    List<Integer> expected =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> keys[i]).reversed())
            .toList();

    new Descending(count).sort(items, count, keys);

    assertThat(items).containsExactly(expected.stream().mapToInt(i -> i).toArray());
  }
}
