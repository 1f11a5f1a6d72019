package limberboard.faults;

import java.util.Random;

/** A page that no packing makes small, always the same. */
final class PackedLarge {
  private PackedLarge() {}

  static String page() {
    Random random = new Random(20261130);
    StringBuilder text = new StringBuilder("---\ntitle: Noise\n---\n");
    for (int i = 0; i < 25_000; i++) {
      text.append(Long.toString(random.nextLong() & 0xffff_ffffL, 36))
          .append(i % 20 == 0 ? "\n\n" : " ");
    }
    return text.append('\n').toString();
  }
}
