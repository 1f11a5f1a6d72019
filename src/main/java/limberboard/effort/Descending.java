package limberboard.effort;

/** Sorts numbers of things by a key, the largest first; equal keys keep their order. */
final class Descending {
  private final int[] scratch;

  /**
   * Makes a sorter.
   *
   * @param most the most things that will ever be sorted
   */
  Descending(int most) {
    this.scratch = new int[most];
  }

  /** Sorts the first {@code count} of the items by their keys: a merge sort from the bottom up. */
  void sort(int[] items, int count, double[] keys) {
    for (int width = 1; width < count; width *= 2) {
      for (int from = 0; from + width < count; from += 2 * width) {
        merge(items, from, from + width, Math.min(from + 2 * width, count), keys);
      }
    }
  }

  private void merge(int[] items, int from, int middle, int to, double[] keys) {
    if (keys[items[middle - 1]] >= keys[items[middle]]) {
      return;
    }
    System.arraycopy(items, from, scratch, from, middle - from);
    int left = from;
    int right = middle;
    for (int at = from; left < middle; at++) {
      boolean takeRight = right < to && keys[items[right]] > keys[scratch[left]];
      items[at] = takeRight ? items[right++] : scratch[left++];
    }
  }
}
