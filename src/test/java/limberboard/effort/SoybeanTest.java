package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import weka.classifiers.bayes.NaiveBayes;
import weka.core.Instance;
import weka.core.Instances;

/**
 * The numeric core on an open set of diagnosed plants, with the class {@code NaiveBayes} of {@code
 * weka-stable} 3.8.6 as the reference. Data and source: {@code soybean.arff} and {@code README.md}
 * beside it.
 */
class SoybeanTest {
  private static final double EXACT = 1e-9;

  @Test
  void givesTheReferencesChancesOnEveryPlantLearntFromAll() throws Exception {
    Instances plants = Soybeans.all();
    assertThat(plants).hasSize(683);
    assertSameChances(plants, plants, 683 * 19);
  }

  @Test
  void givesTheReferencesChancesOnPlantsItHasNotSeen() throws Exception {
    Instances plants = Soybeans.all();
    Instances training = new Instances(plants, 0, Soybeans.TRAINING_FILE);
    assertSameChances(training, plants, 683 * 19);
  }

  private static void assertSameChances(Instances training, Instances test, int comparisons)
      throws Exception {
    NaiveBayes reference = new NaiveBayes();
    reference.buildClassifier(training);
    AnswerModel model = Soybeans.learnt(training);
    int compared = 0;
    for (Instance plant : test) {
      double[] expected = reference.distributionForInstance(plant);
      double[] chances = model.chances(Soybeans.answers(plant));
      assertThat(chances).hasSameSizeAs(expected);
      for (int disease = 0; disease < chances.length; disease++) {
        assertThat(chances[disease]).isCloseTo(expected[disease], within(EXACT));
        compared++;
      }
    }
    assertThat(compared).isEqualTo(comparisons);
  }

  /**
   * The split of the file's own header, 290 plants to learn from and 340 to be tested with, of
   * which M. Tan and L. Eshelman (<i>Using weighted networks to represent classification knowledge
   * in noisy domains</i>, Fifth International Conference on Machine Learning, 1988) named 97.1 %
   * right. The figure here is what this program measures, not a target.
   */
  @Test
  void namesTheDiseaseOfThePlantsInTheOriginalTestFile() throws Exception {
    Instances plants = Soybeans.all();
    Instances training = Soybeans.used(plants, 0, Soybeans.TRAINING_FILE);
    Instances test = Soybeans.used(plants, Soybeans.TRAINING_FILE, plants.size());
    assertThat(training).hasSize(290);
    assertThat(test).hasSize(340);

    AnswerModel model = Soybeans.learnt(training);
    long right =
        test.stream()
            .filter(
                plant ->
                    Soybeans.likeliest(model.chances(Soybeans.answers(plant)))
                        == (int) plant.classValue())
            .count();

    assertThat(right).as("91.2 %").isEqualTo(310);
  }
}
