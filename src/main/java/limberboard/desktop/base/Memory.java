package limberboard.desktop.base;

import java.awt.Rectangle;
import java.util.Arrays;
import java.util.Optional;

/**
 * What is remembered until next time. A value that is missing, damaged or out of range counts as
 * not there. For the event thread only.
 */
public final class Memory {
  private static final int LEAST_SIDE = 200;
  private static final int MOST_SIDE = 20_000;
  private static final int LONGEST = 8_000;
  private final KeptValues node;

  /** A memory kept here. */
  public Memory(KeptValues node) {
    this.node = node;
  }

  /** A text that was remembered; empty text counts as not there. */
  public Optional<String> text(String key) {
    return Optional.of(node.get(key)).filter(text -> !text.isBlank());
  }

  /** Remembers a text of one line and at most 8,000 characters; another is left out. */
  public void remember(String key, String text) {
    if (text.length() <= LONGEST && text.chars().noneMatch(Character::isISOControl)) {
      node.put(key, text);
    }
  }

  /** One of the constants of an enum, or the fallback. */
  public <E extends Enum<E>> E choice(String key, E fallback) {
    return Arrays.stream(fallback.getDeclaringClass().getEnumConstants())
        .filter(constant -> constant.name().equals(node.get(key)))
        .findFirst()
        .orElse(fallback);
  }

  /** A whole number from least to most, or the fallback. */
  public int number(String key, int least, int most, int fallback) {
    try {
      int number = Integer.parseInt(node.get(key).strip());
      return number < least || number > most ? fallback : number;
    } catch (NumberFormatException e) {
      return fallback;
    }
  }

  /** A rectangle of sensible size. */
  public Optional<Rectangle> bounds(String key) {
    String[] parts = node.get(key).split(",", -1);
    try {
      int[] n = Arrays.stream(parts).mapToInt(part -> Integer.parseInt(part.strip())).toArray();
      boolean whole = n.length == 4 && sensible(n[2]) && sensible(n[3]);
      return whole ? Optional.of(new Rectangle(n[0], n[1], n[2], n[3])) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static boolean sensible(int side) {
    return side >= LEAST_SIDE && side <= MOST_SIDE;
  }

  /** Remembers a rectangle. */
  public void remember(String key, Rectangle bounds) {
    remember(key, bounds.x + "," + bounds.y + "," + bounds.width + "," + bounds.height);
  }
}
