package limberboard.letters.next;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Puts letters together that share telling words. A word weighs the more the fewer letters have it
 * (the logarithm of all letters by those that do), and what stands in the first line weighs twice;
 * two letters are as alike as the cosine of their words' weights. The two most alike are put
 * together first, and two groups when their letters are alike on average. The measure is that of
 * Salton, Wong and Yang, A vector space model for automatic indexing, CACM 18(11), 1975. Stateless.
 */
final class SharedWords {
  private static final double ALIKE = 0.12;
  private static final double FIRST_LINE = 2;
  private static final int MOST_WORDS = 4;
  private final TellingWords words;
  private final Set<String> plain;
  private final Map<String, Double> weights = new HashMap<>();

  /**
   * Letters that belong together.
   *
   * @param letters the letters
   * @param words what at least half of them share, the most telling first; of one letter none
   */
  record Group(List<NamedText> letters, List<String> words) {
    Group {
      letters = List.copyOf(letters);
      words = List.copyOf(words);
    }
  }

  /**
   * For a folder of letters.
   *
   * @param words reads them
   * @param others the texts of letters that pages do cover, to see which words are rare
   * @param letters those that are to be put together
   */
  SharedWords(TellingWords words, List<String> others, List<NamedText> letters) {
    this.words = words;
    List<String> all = new ArrayList<>(others);
    letters.forEach(letter -> all.add(letter.text()));
    this.plain = words.plain(all);
    words
        .counted(all)
        .forEach((key, count) -> weights.put(key, Math.log((1.0 + all.size()) / count)));
  }

  /** Letters on their way into a group. */
  private static final class Gathered {
    private final List<NamedText> letters = new ArrayList<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, String> written = new HashMap<>();
    private final Map<String, Double> sum = new HashMap<>();

    void add(Gathered other) {
      letters.addAll(other.letters);
      other.counts.forEach((key, count) -> counts.merge(key, count, Integer::sum));
      other.written.forEach(written::putIfAbsent);
      other.sum.forEach((key, weight) -> sum.merge(key, weight, Double::sum));
    }

    double alike(Gathered other) {
      Map<String, Double> few = sum.size() < other.sum.size() ? sum : other.sum;
      Map<String, Double> many = few == sum ? other.sum : sum;
      double product = 0;
      for (Map.Entry<String, Double> each : few.entrySet()) {
        product += each.getValue() * many.getOrDefault(each.getKey(), 0.0);
      }
      return product / letters.size() / other.letters.size();
    }
  }

  private record Pair(int one, int other, double alike) {}

  /** The groups of letters, the largest first. */
  List<Group> of(List<NamedText> letters) {
    List<Gathered> gathered = letters.stream().map(this::alone).toList();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < gathered.size(); i++) {
      for (int j = i + 1; j < gathered.size(); j++) {
        double alike = gathered.get(i).alike(gathered.get(j));
        if (alike >= ALIKE) {
          pairs.add(new Pair(i, j, alike));
        }
      }
    }
    pairs.sort(Comparator.comparingDouble(Pair::alike).reversed());
    List<Gathered> in = new ArrayList<>(gathered);
    for (Pair pair : pairs) {
      Gathered one = in.get(pair.one());
      Gathered other = in.get(pair.other());
      if (one != other && one.alike(other) >= ALIKE) {
        one.add(other);
        in.replaceAll(each -> each == other ? one : each);
      }
    }
    return in.stream()
        .distinct()
        .map(this::group)
        .sorted(Comparator.comparingInt((Group group) -> group.letters().size()).reversed())
        .toList();
  }

  private Gathered alone(NamedText letter) {
    Gathered alone = new Gathered();
    alone.letters.add(letter);
    alone.written.putAll(words.of(letter.text()));
    alone.written.keySet().retainAll(plain);
    Set<String> first = words.of(letter.title()).keySet();
    Map<String, Double> weighed = new LinkedHashMap<>();
    for (String key : alone.written.keySet()) {
      alone.counts.put(key, 1);
      weighed.put(key, weights.get(key) * (first.contains(key) ? FIRST_LINE : 1));
    }
    double length = Math.sqrt(weighed.values().stream().mapToDouble(w -> w * w).sum());
    weighed.forEach((key, weight) -> alone.sum.put(key, length > 0 ? weight / length : 0));
    return alone;
  }

  private Group group(Gathered gathered) {
    int many = gathered.letters.size();
    List<String> shared =
        gathered.counts.entrySet().stream()
            .filter(each -> many > 1 && 2 * each.getValue() >= many && each.getValue() > 1)
            .map(Map.Entry::getKey)
            .sorted(
                Comparator.comparingDouble((String key) -> -gathered.sum.get(key))
                    .thenComparing(Comparator.naturalOrder()))
            .map(gathered.written::get)
            .distinct()
            .limit(MOST_WORDS)
            .toList();
    return new Group(gathered.letters, shared);
  }
}
