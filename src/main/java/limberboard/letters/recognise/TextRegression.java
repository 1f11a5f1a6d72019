package limberboard.letters.recognise;

import de.bwaldvogel.liblinear.Feature;
import de.bwaldvogel.liblinear.FeatureNode;
import de.bwaldvogel.liblinear.Linear;
import de.bwaldvogel.liblinear.Model;
import de.bwaldvogel.liblinear.Parameter;
import de.bwaldvogel.liblinear.Problem;
import de.bwaldvogel.liblinear.SolverType;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * How likely texts are of one sort or not: a logistic regression over what they have, with a
 * penalty for the squares of its weights, brought to its optimum by LIBLINEAR (R.-E. Fan et al.,
 * LIBLINEAR: A library for large linear classification, JMLR 9, 2008). Each text counts by what it
 * has, the rarer the more (G. Salton and C. Buckley, Term-weighting approaches in automatic text
 * retrieval, Information Processing and Management 24(5), 1988), and is as long as any other. The
 * same examples give the same weights. Immutable.
 */
final class TextRegression {
  private static final double CLOSE = 0.01;
  private static final double LEAST = 1e-5;
  private static final int LEAST_MET = 2;
  private static final int SO = 1;
  private static final int NOT_SO = 0;

  private final Map<String, Integer> numbers = new HashMap<>();
  private final double[] rarity;
  private final int constant;
  private final double share;
  private final Optional<Model> model;

  /**
   * A text to learn from.
   *
   * @param keys what it has, asked for when it is needed, so that thousands of texts need little
   *     room
   * @param so whether it is of the sort
   */
  record Example(Supplier<Set<String>> keys, boolean so) {}

  /**
   * Learns.
   *
   * @param examples texts, some of the sort and some not; with those of one side only, each text
   *     has that side's chance
   * @param cost how much an example told wrongly costs beside the penalty for weights, more than 0
   */
  TextRegression(List<Example> examples, double cost) {
    long sort = examples.stream().filter(Example::so).count();
    share = examples.isEmpty() ? 0 : (double) sort / examples.size();
    if (sort == 0 || sort == examples.size()) {
      rarity = new double[0];
      constant = 1;
      model = Optional.empty();
      return;
    }
    Linear.disableDebugOutput();
    Map<String, Integer> met = new HashMap<>();
    examples.forEach(
        example -> example.keys().get().forEach(key -> met.merge(key, 1, Integer::sum)));
    met.keySet().stream()
        .filter(key -> met.get(key) >= LEAST_MET)
        .sorted()
        .forEach(key -> numbers.put(key, numbers.size() + 1));
    constant = numbers.size() + 1;
    rarity = new double[constant];
    numbers.forEach(
        (key, number) ->
            rarity[number - 1] = Math.log(1 + (double) examples.size() / met.get(key)));
    Problem problem = new Problem();
    problem.l = examples.size();
    problem.n = constant;
    problem.bias = 1;
    problem.x =
        examples.stream().map(each -> features(each.keys().get())).toArray(Feature[][]::new);
    problem.y = examples.stream().mapToDouble(each -> each.so() ? SO : NOT_SO).toArray();
    model = Optional.of(Linear.train(problem, new Parameter(SolverType.L2R_LR, cost, CLOSE)));
  }

  private Feature[] features(Collection<String> keys) {
    int[] known = keys.stream().filter(numbers::containsKey).mapToInt(numbers::get).toArray();
    Arrays.sort(known);
    double squares =
        Arrays.stream(known).mapToDouble(each -> rarity[each - 1]).map(r -> r * r).sum();
    double length = Math.sqrt(Math.max(LEAST, squares));
    Feature[] features = new Feature[known.length + 1];
    for (int i = 0; i < known.length; i++) {
      features[i] = new FeatureNode(known[i], rarity[known[i] - 1] / length);
    }
    features[known.length] = new FeatureNode(constant, 1);
    return features;
  }

  /** The chance that a text is of the sort, 0 to 1. */
  double chance(Collection<String> keys) {
    return model.map(learnt -> chance(learnt, keys)).orElse(share);
  }

  private double chance(Model learnt, Collection<String> keys) {
    double[] chances = new double[2];
    Linear.predictProbability(learnt, features(keys), chances);
    return chances[learnt.getLabels()[0] == SO ? 0 : 1];
  }
}
