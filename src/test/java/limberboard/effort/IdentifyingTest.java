package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/**
 * Finding the cause out with yes-or-no questions, against Huffman's codes.
 *
 * <p>Where acting on the wrong cause is so dear that nobody does it, every strategy ends with the
 * cause known and what that then takes, the same for all causes. Each question costs a minute, so
 * that what is above is the average number of questions: the length of a code for the causes, of
 * which Huffman's is the shortest, and less than one above Shannon's entropy (C. E. Shannon, <i>A
 * mathematical theory of communication</i>, Bell System Technical Journal 27, 1948, theorem 9; T.
 * M. Cover, J. A. Thomas, <i>Elements of Information Theory</i>, section 5.4).
 */
class IdentifyingTest {
  private static final double CLOSE = 1e-6;
  private static final double DEAR = 10_000;

  /** Cover and Thomas, example 5.6.1; figures from memory: 2.3 questions, entropy 2.285 bits. */
  @Test
  void asksAsManyQuestionsAsTheTextbook() {
    double[] chances = {0.25, 0.25, 0.2, 0.15, 0.15};
    assertThat(questionsToMend(chances, everyQuestion(5))).isCloseTo(2.3, within(CLOSE));
    assertThat(Huffman.questions(chances)).isCloseTo(2.3, within(CLOSE));
    assertThat(Huffman.entropy(chances)).isCloseTo(2.285, within(0.0005));
  }

  @Property(tries = 60, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void asksAsManyQuestionsAsHuffmansCodeIsLong(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(min = 3, max = 5) int causes) {
    double[] chances = chances(seed, causes);
    List<Integer> any = everyQuestion(causes);

    double questions = questionsToMend(chances, any);

    assertThat(questions).isCloseTo(Huffman.questions(chances), within(CLOSE));
    assertThat(questions).isCloseTo(questionsToTellTheYard(chances, any), within(CLOSE));
    assertThat(questions)
        .isGreaterThanOrEqualTo(Huffman.entropy(chances) - CLOSE)
        .isLessThan(Huffman.entropy(chances) + 1);
  }

  @Property(tries = 60, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void needsNoFewerQuestionsWhenOnlySomeMayBeAsked(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(min = 3, max = 5) int causes) {
    double[] chances = chances(seed, causes);
    List<Integer> oneByOne = IntStream.range(0, causes).mapToObj(cause -> 1 << cause).toList();

    assertThat(questionsToMend(chances, oneByOne))
        .isGreaterThanOrEqualTo(Huffman.questions(chances) - CLOSE)
        .isCloseTo(oneAfterTheOther(chances), within(CLOSE));
  }

  /** Asking for one cause at a time, the likeliest first, the last two with one question. */
  private static double oneAfterTheOther(double[] chances) {
    double[] rising = chances.clone();
    Arrays.sort(rising);
    int last = rising.length - 1;
    double questions = rising[0] * last;
    for (int i = 1; i <= last; i++) {
      questions += rising[i] * (rising.length - i);
    }
    return questions;
  }

  private static double questionsToMend(double[] chances, List<Integer> questions) {
    SmallProblem problem = asking(chances, questions);
    for (int cause = 0; cause < chances.length; cause++) {
      problem.mend(cause, DEAR);
    }
    return provenMinutes(problem.model(1_000 * DEAR)) - DEAR;
  }

  private static double questionsToTellTheYard(double[] chances, List<Integer> questions) {
    return provenMinutes(asking(chances, questions).model(1, DEAR)) - 1;
  }

  private static double provenMinutes(EffortModel model) {
    Advice advice = new Planner(Long.MAX_VALUE).advise(model, model.beginning());
    assertThat(advice.gap()).isCloseTo(0, within(1e-12));
    return advice.best().expectedMinutes();
  }

  /** Questions as bits: is it one of these? */
  private static SmallProblem asking(double[] chances, List<Integer> questions) {
    SmallProblem problem = new SmallProblem(chances);
    for (int among : questions) {
      double[] yes = IntStream.range(0, chances.length).mapToDouble(i -> among >> i & 1).toArray();
      double[] no = IntStream.range(0, chances.length).mapToDouble(i -> 1 - yes[i]).toArray();
      problem.check(1, yes, no);
    }
    return problem;
  }

  /** All that tell anything, each the one way round. */
  private static List<Integer> everyQuestion(int causes) {
    return IntStream.range(1, 1 << causes - 1).boxed().toList();
  }

  /** None so small that a guess could pay. */
  private static double[] chances(long seed, int causes) {
    return Normalised.ofOne(new Random(seed).doubles(causes, 0.02, 1).toArray());
  }
}
