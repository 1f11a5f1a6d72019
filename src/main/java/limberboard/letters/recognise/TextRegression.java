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
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How likely texts are of one sort or not: a logistic regression over what they have, with a
 * penalty for the squares of its weights, brought to its optimum by LIBLINEAR (R.-E. Fan et al.,
 * LIBLINEAR: A library for large linear classification, JMLR 9, 2008). Each text counts by what it
 * has, the rarer the more, and is as long as any other. The same examples give the same weights.
 * Immutable.
 */
final class TextRegression {
  private static final double CLOSE = 0.01;
  private static final int SO = 1;
  private static final int NOT_SO = 0;

  private final KeyNumbers keys;
  private final double share;
  private final Optional<Model> model;

  /**
   * A text to learn from.
   *
   * @param keys what it has, asked for when it is needed, so that thousands of texts need little
   *     room
   * @param so whether it is of the sort
   * @param times how often it counts, 1 or more
   */
  record Example(Supplier<Set<String>> keys, boolean so, int times) {}

  /**
   * Learns.
   *
   * @param examples texts, some of the sort and some not; with those of one side only, each text
   *     has that side's chance
   * @param cost how much an example told wrongly costs beside the penalty for weights, more than 0
   */
  TextRegression(List<Example> examples, double cost) {
    int all = times(examples.stream());
    int sort = times(examples.stream().filter(Example::so));
    boolean both = sort > 0 && sort < all;
    share = examples.isEmpty() ? 0 : (double) sort / all;
    keys = new KeyNumbers(both ? examples : List.of(), each -> each.keys().get(), Example::times);
    model = both ? Optional.of(learnt(examples, cost)) : Optional.empty();
  }

  private TextRegression(KeyNumbers keys, Feature[][] texts, double[] so, double cost) {
    double sort = Arrays.stream(so).sum();
    this.keys = keys;
    share = so.length == 0 ? 0 : sort / so.length;
    model =
        sort > 0 && sort < so.length
            ? Optional.of(learnt(keys, texts, so, cost))
            : Optional.empty();
  }

  /**
   * Learns several sorts from the same texts, of which each counts once: the same as to learn them
   * one after the other, but what the texts have is numbered only once.
   *
   * @param texts what each text has
   * @param sorts of which sorts each text is, numbered from 0
   * @param number how many sorts there are
   * @param cost as for one
   */
  static List<TextRegression> ofSorts(
      List<Set<String>> texts, List<Set<Integer>> sorts, int number, double cost) {
    KeyNumbers keys = new KeyNumbers(texts, each -> each);
    Feature[][] features =
        texts.stream().map(each -> features(keys, each)).toArray(Feature[][]::new);
    return IntStream.range(0, number)
        .mapToObj(
            sort ->
                new TextRegression(
                    keys,
                    features,
                    sorts.stream().mapToDouble(of -> of.contains(sort) ? SO : NOT_SO).toArray(),
                    cost))
        .toList();
  }

  private static int times(Stream<Example> examples) {
    return examples.mapToInt(Example::times).sum();
  }

  private Model learnt(List<Example> examples, double cost) {
    int all = times(examples.stream());
    Feature[][] texts = new Feature[all][];
    double[] so = new double[all];
    int row = 0;
    for (Example each : examples) {
      Arrays.fill(texts, row, row + each.times(), features(keys, each.keys().get()));
      Arrays.fill(so, row, row + each.times(), each.so() ? SO : NOT_SO);
      row += each.times();
    }
    return learnt(keys, texts, so, cost);
  }

  private static Model learnt(KeyNumbers keys, Feature[][] texts, double[] so, double cost) {
    Linear.disableDebugOutput();
    Problem problem = new Problem();
    problem.l = texts.length;
    problem.n = keys.size() + 1;
    problem.bias = 1;
    problem.x = texts;
    problem.y = so;
    return Linear.train(problem, new Parameter(SolverType.L2R_LR, cost, CLOSE));
  }

  /** What a text has, numbered from 1 as LIBLINEAR does, and a constant at the end. */
  private static Feature[] features(KeyNumbers keys, Collection<String> of) {
    KeyNumbers.Numbers text = keys.of(of, 0);
    Feature[] features = new Feature[text.keys().length + 1];
    for (int i = 0; i < text.keys().length; i++) {
      features[i] = new FeatureNode(text.keys()[i] + 1, text.values()[i]);
    }
    features[text.keys().length] = new FeatureNode(keys.size() + 1, 1);
    return features;
  }

  /** The chance that a text is of the sort, 0 to 1. */
  double chance(Collection<String> of) {
    return model.map(learnt -> chance(learnt, of)).orElse(share);
  }

  private double chance(Model learnt, Collection<String> of) {
    double[] chances = new double[2];
    Linear.predictProbability(learnt, features(keys, of), chances);
    return chances[learnt.getLabels()[0] == SO ? 0 : 1];
  }
}
