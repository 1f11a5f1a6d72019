package limberboard.drill.mark;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether what somebody calls 70 % is right seven times in ten: said certainties in classes of
 * equal width, with how often each class was right. A certainty on the border of two classes
 * belongs to the lower one.
 *
 * @param classes those that hold something, the least certain first
 */
public record Calibration(List<Said> classes) {
  /** How many classes there are where nothing else is asked for. */
  public static final int USUAL_CLASSES = 5;

  /**
   * One class.
   *
   * @param from its lower border, 0 to 1
   * @param to its upper border
   * @param count how many certainties were said in it
   * @param said what was said in it on average
   * @param right how often it was right, 0 to 1
   */
  public record Said(double from, double to, int count, double said, double right) {}

  /** Copies the list. */
  public Calibration {
    classes = List.copyOf(classes);
  }

  /**
   * Sorts certainties into classes.
   *
   * @param count how many classes, 1 or more
   */
  public static Calibration of(List<Certainty> all, int count) {
    List<Said> classes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int number = i;
      List<Certainty> here =
          all.stream().filter(each -> classOf(each.said(), count) == number).toList();
      if (!here.isEmpty()) {
        classes.add(
            new Said(
                (double) i / count,
                (double) (i + 1) / count,
                here.size(),
                here.stream().mapToDouble(Certainty::said).average().orElseThrow(),
                here.stream().mapToDouble(each -> each.right() ? 1 : 0).average().orElseThrow()));
      }
    }
    return new Calibration(classes);
  }

  private static int classOf(double said, int count) {
    int number = 0;
    while (number < count - 1 && said > (double) (number + 1) / count) {
      number++;
    }
    return number;
  }

  /**
   * How far what was said is from how often it was right, on average over what was said, 0 to 1.
   */
  public double off() {
    int all = classes.stream().mapToInt(Said::count).sum();
    return classes.stream()
            .mapToDouble(each -> each.count() * Math.abs(each.said() - each.right()))
            .sum()
        / Math.max(1, all);
  }
}
