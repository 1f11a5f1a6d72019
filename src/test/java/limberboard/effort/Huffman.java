package limberboard.effort;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * The fewest yes-or-no questions that find out which of several things it is, on average, when any
 * question may be asked: D. A. Huffman, <i>A method for the construction of minimum-redundancy
 * codes</i>, Proceedings of the IRE 40(9), 1952. Each merging of two groups is one question more
 * for everything in them.
 */
final class Huffman {
  private Huffman() {}

  static double questions(double... chances) {
    PriorityQueue<Double> groups = new PriorityQueue<>();
    Arrays.stream(chances).forEach(groups::add);
    double questions = 0;
    while (groups.size() > 1) {
      double merged = groups.remove() + groups.remove();
      questions += merged;
      groups.add(merged);
    }
    return questions;
  }

  /** Shannon's entropy in bits. */
  static double entropy(double... chances) {
    return Arrays.stream(chances).map(chance -> -chance * Math.log(chance) / Math.log(2)).sum();
  }
}
