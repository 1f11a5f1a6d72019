package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Remnants, with the pieces that can come from nothing else because no reel is long enough; these
 * are placed first, each in the tightest remnant.
 */
final class RemnantsOnly {
  private final List<Long> lengths;
  private final List<Long> rooms;
  private final Map<Integer, List<Long>> placed = new TreeMap<>();

  RemnantsOnly(List<Long> lengths) {
    this.lengths = List.copyOf(lengths);
    this.rooms = new ArrayList<>(lengths);
  }

  /** Places a piece; says whether a remnant is long enough. */
  boolean place(long piece) {
    int found = -1;
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i) >= piece && (found < 0 || rooms.get(i) < rooms.get(found))) {
        found = i;
      }
    }
    if (found < 0) {
      return false;
    }
    rooms.set(found, rooms.get(found) - piece);
    placed.computeIfAbsent(found, remnant -> new ArrayList<>()).add(piece);
    return true;
  }

  /** What is left of each remnant. */
  List<Long> rooms() {
    return List.copyOf(rooms);
  }

  /** The length of a remnant before anything was cut from it. */
  long length(int remnant) {
    return lengths.get(remnant);
  }

  /** The pieces placed, by remnant. */
  Map<Integer, List<Long>> placed() {
    Map<Integer, List<Long>> copy = new TreeMap<>();
    placed.forEach((remnant, pieces) -> copy.put(remnant, new ArrayList<>(pieces)));
    return copy;
  }
}
