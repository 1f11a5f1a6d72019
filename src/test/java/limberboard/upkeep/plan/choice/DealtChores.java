package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Small questions dealt out at random. */
final class DealtChores {
  private DealtChores() {}

  static Chores deal(Random random, int most, int days) {
    int size = 1 + random.nextInt(most);
    int accesses = random.nextInt(4);
    List<Integer> openings = new ArrayList<>();
    for (int i = 0; i < accesses; i++) {
      openings.add(random.nextInt(8));
    }
    List<Chore> chores = new ArrayList<>();
    int stages = 1 + random.nextInt(3);
    for (int i = 0; i < size; i++) {
      Set<Integer> after = new TreeSet<>();
      while (i > 0 && random.nextInt(3) == 0) {
        after.add(random.nextInt(i));
      }
      Set<Integer> behind = new TreeSet<>();
      while (i > 0 && random.nextInt(3) == 0) {
        behind.add(random.nextInt(i));
      }
      Set<Integer> opens = new TreeSet<>();
      while (accesses > 0 && random.nextInt(2) == 0) {
        opens.add(random.nextInt(accesses));
      }
      boolean any = random.nextInt(3) > 0;
      int first = any ? 0 : random.nextInt(days);
      int last = any ? days - 1 : random.nextInt(days);
      int worth = random.nextInt(random.nextBoolean() ? 5 : 40);
      int stage = random.nextInt(stages + 1) - 1;
      chores.add(new Chore(random.nextInt(10), worth, after, opens, first, last, stage, behind));
    }
    List<Integer> time = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      time.add(random.nextInt(30 / days + 5));
    }
    return new Chores(chores, openings, time);
  }
}
