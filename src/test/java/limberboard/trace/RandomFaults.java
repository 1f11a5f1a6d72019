package limberboard.trace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import limberboard.library.Library;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.value.Likelihood;

/**
 * Random symptom pages on Knot, the same for the same seed, with mends and access of the workspace
 * {@code leak}. Likelihoods of 0 and 1 are among them.
 */
public final class RandomFaults {
  private static final List<String> MENDS =
      List.of("replace-seal", "rebed-stem-fitting", "air-the-cabin", "mend-tank");
  private static final List<List<String>> ACCESS =
      List.of(List.of(), List.of("headlining-down"), List.of("berth-lifted"), List.of("tank-out"));
  private final Random random;
  private final Fault knot;
  private final Library library;

  public RandomFaults(long seed) {
    this.random = new Random(seed);
    this.library = Leak.workspace().library();
    this.knot = Leak.of("knot", library, List.of());
  }

  public Fault fault(int causes, int checks) {
    List<String> ids = IntStream.range(0, causes).mapToObj(i -> "cause-" + i).toList();
    List<Cause> listed = ids.stream().map(this::cause).toList();
    List<Check> asked = IntStream.range(0, checks).mapToObj(i -> check("check-" + i, ids)).toList();
    Page<Symptom> page =
        new Page<>(
            "random",
            "articles/symptoms/random.md",
            new Head("Random", null, null, null, null, null, null, null),
            new Symptom(null, listed, asked, OptionalDouble.empty()),
            "",
            1);
    return Fault.of(page, knot.fitting(), library, List.of());
  }

  private Cause cause(String id) {
    return new Cause(
        id,
        "Title of " + id,
        null,
        null,
        1.0 + random.nextInt(10),
        null,
        MENDS.get(random.nextInt(MENDS.size())),
        likelihood(),
        null);
  }

  private Check check(String id, List<String> causes) {
    List<String> answers =
        IntStream.range(0, 2 + random.nextInt(5)).mapToObj(i -> "answer-" + i).toList();
    Map<String, Map<String, Likelihood>> finds = new LinkedHashMap<>();
    for (String answer : answers) {
      Map<String, Likelihood> found = new LinkedHashMap<>();
      for (String cause : causes) {
        if (random.nextInt(3) == 0) {
          found.put(cause, likelihood());
        }
      }
      if (random.nextBoolean()) {
        found.put(Check.OTHERS, likelihood());
      }
      finds.put(answer, found);
    }
    return new Check(
        id,
        "Question of " + id,
        "How.",
        Optional.empty(),
        1.0 + random.nextInt(30),
        ACCESS.get(random.nextInt(ACCESS.size())),
        null,
        null,
        null,
        null,
        answers,
        finds,
        null,
        null,
        random.nextInt(10) == 0,
        Optional.of("Make it safe."),
        answers.subList(0, 1));
  }

  private Likelihood likelihood() {
    int kind = random.nextInt(10);
    double value = kind == 0 ? 0 : kind == 1 ? 1 : random.nextDouble();
    return new Likelihood(Double.toString(value), value);
  }

  /** A random trace of the fault with that many steps of all sorts. */
  Trace trace(Fault fault, int steps) {
    Trace trace = Trace.begin(fault);
    for (int i = 0; i < steps; i++) {
      trace = randomStep(trace);
    }
    return trace;
  }

  Trace randomStep(Trace trace) {
    Fault fault = trace.fault();
    int what = random.nextInt(10);
    if (what == 0 && fault.causes().size() > 1) {
      return trace.mendTried(fault.causes().get(random.nextInt(fault.causes().size() - 1)).id());
    }
    if (fault.checks().isEmpty()) {
      return trace;
    }
    FaultCheck check = fault.checks().get(random.nextInt(fault.checks().size()));
    return what == 1
        ? trace.cantTell(check.id())
        : trace.answer(check.id(), anyOf(check.answers()));
  }

  <T> T anyOf(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  <T> List<T> shuffled(List<T> list) {
    List<T> copy = new ArrayList<>(list);
    Collections.shuffle(copy, random);
    return copy;
  }
}
