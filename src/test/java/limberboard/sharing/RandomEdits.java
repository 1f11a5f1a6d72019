package limberboard.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Makes up pages and changes of them, each change with words that stand nowhere else. */
final class RandomEdits {
  private final Random random;
  private int number;

  RandomEdits(long seed) {
    this.random = new Random(seed);
  }

  /** A number below a bound. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** Words that no other text has. */
  String words() {
    number++;
    return "word" + number + "x" + Integer.toHexString(random.nextInt(1 << 20));
  }

  /** A page with a header and paragraphs. */
  String page() {
    StringBuilder text = new StringBuilder("---\ntitle: " + words() + "\n");
    for (String key : List.of("summary", "minutes", "system", "zones", "skill", "tools")) {
      text.append(key).append(": ").append(words()).append('\n');
    }
    text.append("causes:\n");
    for (int i = 0; i < 4; i++) {
      text.append("  - ").append(words()).append('\n');
    }
    text.append("---\n");
    for (int i = 0; i < 8; i++) {
      text.append(i % 3 == 0 ? "## " + words() + "\n\n" : "");
      text.append(words()).append(' ').append(words()).append(".\n");
      text.append(words()).append(".\n\n");
    }
    return text.toString();
  }

  /** The same with one line changed, put in or taken out; never a fence. */
  String changed(String page) {
    List<String> lines = new ArrayList<>(page.lines().toList());
    int at;
    do {
      at = 1 + random.nextInt(lines.size() - 1);
    } while (lines.get(at).equals("---") || lines.get(at).isBlank());
    String line = lines.get(at);
    boolean inHeader = at < lines.lastIndexOf("---");
    switch (random.nextInt(4)) {
      case 0 -> {
        if (inHeader) {
          lines.set(at, line.replaceFirst("(: |- ).*", "$1" + words()));
        } else {
          lines.add(at, words() + ".");
          lines.add(at + 1, "");
        }
      }
      case 1 -> {
        if (inHeader) {
          lines.add(at, line.startsWith("  ") ? "  - " + words() : words() + ": " + words());
        } else {
          lines.set(at, line + " " + words());
        }
      }
      default -> lines.set(at, inHeader ? line + words() : words() + " " + line);
    }
    return String.join("\n", lines) + "\n";
  }
}
