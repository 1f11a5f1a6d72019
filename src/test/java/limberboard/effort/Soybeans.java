package limberboard.effort;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import weka.core.Instance;
import weka.core.Instances;
import weka.core.converters.ArffLoader;

/** The soybean plants, and an {@link AnswerModel} learnt from some of them. */
final class Soybeans {
  /** Plants of the original training file. */
  static final int TRAINING_FILE = 307;

  /** Diseases that earlier work used, the first ones. */
  static final int USED_DISEASES = 15;

  private Soybeans() {}

  static Instances all() throws IOException {
    try (InputStream in = Soybeans.class.getResourceAsStream("soybean.arff")) {
      ArffLoader loader = new ArffLoader();
      loader.setSource(in);
      Instances plants = loader.getDataSet();
      plants.setClassIndex(plants.numAttributes() - 1);
      return plants;
    }
  }

  /** The plants with the first diseases only, from one number to another. */
  static Instances used(Instances plants, int from, int to) {
    Instances used = new Instances(plants, to - from);
    for (int i = from; i < to; i++) {
      if (plants.instance(i).classValue() < USED_DISEASES) {
        used.add(plants.instance(i));
      }
    }
    return used;
  }

  /**
   * Learns with Laplace's rule of succession: every count begins at 1. Unknown findings are passed
   * over.
   */
  static AnswerModel learnt(Instances plants) {
    int diseases = plants.numClasses();
    double[] priors = new double[diseases];
    Arrays.fill(priors, 1);
    for (Instance plant : plants) {
      priors[(int) plant.classValue()]++;
    }
    List<double[][]> tables = new ArrayList<>();
    for (int finding = 0; finding < plants.classIndex(); finding++) {
      tables.add(table(plants, finding, diseases));
    }
    return new AnswerModel(priors, tables);
  }

  private static double[][] table(Instances plants, int finding, int diseases) {
    double[][] counts = new double[plants.attribute(finding).numValues()][diseases];
    double[] sums = new double[diseases];
    for (double[] row : counts) {
      Arrays.fill(row, 1);
    }
    Arrays.fill(sums, counts.length);
    for (Instance plant : plants) {
      if (!plant.isMissing(finding)) {
        counts[(int) plant.value(finding)][(int) plant.classValue()]++;
        sums[(int) plant.classValue()]++;
      }
    }
    for (double[] row : counts) {
      for (int disease = 0; disease < diseases; disease++) {
        row[disease] /= sums[disease];
      }
    }
    return counts;
  }

  /** A plant's findings as answers. */
  static int[] answers(Instance plant) {
    return IntStream.range(0, plant.classIndex())
        .map(i -> plant.isMissing(i) ? AnswerModel.NOT_ANSWERED : (int) plant.value(i))
        .toArray();
  }

  static int likeliest(double[] chances) {
    return IntStream.range(0, chances.length).reduce(0, (a, b) -> chances[b] > chances[a] ? b : a);
  }
}
