package limberboard.workings.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import limberboard.library.value.KnownUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What holds for every sum there is. */
class SumsTest {
  private final List<Sum> sums = Sums.ofTheTrade().all();

  @Test
  void namesAreDistinctAndCanBeTyped() {
    assertThat(sums.stream().map(Sum::id)).doesNotHaveDuplicates().allMatch(SumsTest::canBeTyped);
    for (Sum sum : sums) {
      assertThat(sum.inputs().stream().map(Input::id))
          .doesNotHaveDuplicates()
          .allMatch(SumsTest::canBeTyped);
      assertThat(words(sum)).allMatch(SumsTest::canBeTyped);
    }
  }

  private static Stream<String> words(Sum sum) {
    return sum.inputs().stream()
        .filter(Input.Choice.class::isInstance)
        .flatMap(input -> ((Input.Choice) input).words().stream());
  }

  /** A word that began with a digit would be read as a quantity. */
  private static boolean canBeTyped(String id) {
    return id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*");
  }

  @Test
  void sayWhatTheyAnswerAndWhereTheyComeFrom() {
    for (Sum sum : sums) {
      SumText text = sum.text();
      assertThat(List.of(text.title(), text.formula(), text.source(), text.holds()))
          .as(sum.id())
          .noneMatch(String::isBlank);
      assertThat(text.answers()).endsWith("?");
    }
  }

  @Test
  void reckonWithNothingPutIn() {
    for (Sum sum : sums) {
      Reckoning reckoning = sum.reckon(Map.of());
      assertThat(reckoning).as(sum.id()).isInstanceOf(Reckoning.Done.class);
      Answer answer = ((Reckoning.Done) reckoning).answer();
      assertThat(answer.results()).as(sum.id()).isNotEmpty();
      assertThat(answer.working()).as(sum.id()).isNotEmpty();
    }
  }

  @Test
  void usualValuesAreSound() {
    for (Sum sum : sums) {
      for (Input input : sum.inputs()) {
        if (input instanceof Input.Number number) {
          number
              .usual()
              .ifPresent(
                  usual -> assertThat(number.sound().contains(usual)).as(input.id()).isTrue());
          assertThat(number.allowed().contains(number.sound().least())).as(input.id()).isTrue();
          assertThat(number.allowed().contains(number.sound().most())).as(input.id()).isTrue();
        } else if (input instanceof Input.Choice choice) {
          assertThat(choice.option(choice.usual())).as(input.id()).isPresent();
        }
      }
    }
  }

  /** Whatever is allowed is computed, or refused with a reason, but never throws. */
  @Property(seed = "20261125", tries = 400)
  void neverThrowWithinTheAllowedSpans(@ForAll long seed) {
    Random random = new Random(seed);
    for (Sum sum : sums) {
      Map<String, Value> values = new HashMap<>();
      sum.inputs().forEach(input -> values.put(input.id(), anyOf(input, random)));
      Reckoning reckoning = sum.reckon(values);
      if (reckoning instanceof Reckoning.Done done) {
        assertThat(done.put()).hasSameSizeAs(sum.inputs());
        assertThat(done.answer().results()).noneMatch(SumsTest::isNotANumber);
      } else {
        assertThat(((Reckoning.Refused) reckoning).reasons()).isNotEmpty();
      }
    }
  }

  @Test
  void refuseWhatIsNotFinite() {
    Sum endless = new Endless();
    assertThat(Asked.refused(endless)).anyMatch(reason -> reason.contains("beyond"));
  }

  /** A sum whose result has no bounds. */
  private static final class Endless implements Sum {
    @Override
    public SumText text() {
      return new SumText("endless", "Endless", "How much?", "1/0", "none", "nothing");
    }

    @Override
    public List<Input> inputs() {
      return List.of();
    }

    @Override
    public Answer work(CheckedInputs given) {
      return Answer.empty()
          .working("1/0 = " + Answer.say(1 / 0.0, KnownUnit.METRES))
          .result("endless", "Endless", 1 / 0.0, KnownUnit.METRES);
    }
  }

  private static boolean isNotANumber(Result result) {
    return result instanceof Result.Reckoned reckoned
        && !Double.isFinite(reckoned.quantity().getValue().doubleValue());
  }

  private static Value anyOf(Input input, Random random) {
    if (input instanceof Input.Choice choice) {
      return Value.of(choice.words().get(random.nextInt(choice.words().size())));
    }
    Input.Number number = (Input.Number) input;
    Input.Span span = number.allowed();
    double share = random.nextInt(4) == 0 ? random.nextInt(2) : Math.pow(random.nextDouble(), 3);
    double value = span.least() + share * (span.most() - span.least());
    return Value.of(Math.max(span.least(), Math.min(span.most(), value)), number.unit());
  }

  @Test
  void refuseWhateverIsHostile() {
    List<Value> hostile =
        List.of(
            Value.of(1e300, KnownUnit.METRES),
            Value.of(-1, KnownUnit.MILLIMETRE),
            Value.of(-1e300, KnownUnit.DEGREES_CELSIUS),
            Value.of(1e-300, KnownUnit.HOURS),
            Value.of(1e300, KnownUnit.PIECES),
            Value.of(""),
            Value.of("<script>"),
            Value.of("x".repeat(100_000)));
    for (Sum sum : sums) {
      for (Input input : sum.inputs()) {
        for (Value value : hostile) {
          assertThatCode(() -> sum.reckon(Map.of(input.id(), value)))
              .as(sum.id() + " " + input.id())
              .doesNotThrowAnyException();
          assertThat(sum.reckon(Map.of(input.id(), value))).isInstanceOf(Reckoning.Refused.class);
        }
      }
      assertThat(sum.reckon(Map.of("", Value.of("")))).isInstanceOf(Reckoning.Refused.class);
    }
  }
}
