package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.proofread.text.Sentence;
import limberboard.words.Phrases;

/**
 * Something that a material's page keeps it off, in words to be found in sentences.
 *
 * @param what as the page says it
 * @param why what would happen
 * @param names each a name of it, in stems; all words of one must be near
 */
record Spoilt(String what, String why, List<Set<String>> names) {
  private static final Pattern UNCERTAIN =
      Pattern.compile(
          "\\b(when|while|until|unless|without|set|as|in|on|above|under|between|near|with|whose"
              + "|which|instead)\\b");
  private static final Pattern THAT = Pattern.compile("\\bthat\\b.*");
  private static final Pattern OR = Pattern.compile(",| and | or ");
  private static final Set<String> SAYING_NOTHING =
      Set.of("hous", "surfac", "glaz", "the", "a", "an", "old", "part", "place", "plac", "any");
  private static final Set<String> TOO_WIDE =
      Set.of(
          "skin", "water", "dust", "gear", "coolant", "sail", "rope", "deck", "pet", "child",
          "pain", "cabin", "bilg", "rub", "oil", "damp", "surfac", "joint", "");
  private static final Map<Substance, List<String>> SUBSTANCES =
      Map.of(
          Substance.ACRYLIC, List.of("acrylic", "pane"),
          Substance.POLYCARBONATE, List.of("polycarbonate", "plastic"),
          Substance.ABS, List.of("abs", "plastic"),
          Substance.ALUMINIUM, List.of("aluminium"),
          Substance.CARBON, List.of("carbon"),
          Substance.COPPER, List.of("copper"));

  /** Copies the lists. */
  Spoilt {
    names = names.stream().map(Set::copyOf).toList();
  }

  /** What a material's page keeps it off without an if or when. */
  static List<Spoilt> of(Page<Material> page) {
    List<Spoilt> all = new ArrayList<>();
    for (Material.KeepOff off : page.details().keepOff()) {
      String plain = THAT.matcher(off.what()).replaceAll("");
      if (!UNCERTAIN.matcher(plain).find()) {
        List<Set<String>> names = new ArrayList<>();
        for (String name : OR.split(plain)) {
          Set<String> stems = new TreeSet<>(Phrases.stems(name));
          stems.removeAll(SAYING_NOTHING);
          if (stems.remove("epdm")) {
            names.add(Set.of("epdm"));
            names.add(Set.of("seal"));
          }
          if (!stems.isEmpty() && !(stems.size() == 1 && TOO_WIDE.containsAll(stems))) {
            names.add(stems);
          }
        }
        all.add(new Spoilt(off.what(), off.why(), names));
      }
    }
    page.details()
        .mixing()
        .attacks()
        .forEach(
            attack ->
                all.add(
                    new Spoilt(
                        attack.what().word(),
                        attack.why(),
                        SUBSTANCES.getOrDefault(attack.what(), List.of()).stream()
                            .map(word -> Set.copyOf(Phrases.stems(word)))
                            .toList())));
    return all;
  }

  /**
   * Where one of its names stands near another thing in a sentence, or -1.
   *
   * @param place where that thing's name begins
   * @param length of that name, in words; they are not looked at
   * @param reach how many words away it may be
   */
  int in(Sentence sentence, int place, int length, int reach) {
    for (Set<String> name : names) {
      int first = -1;
      int found = 0;
      for (String stem : name) {
        int at = near(stem, sentence, place, length, reach);
        found += at >= 0 ? 1 : 0;
        first = first < 0 ? at : first;
      }
      if (found == name.size()) {
        return first;
      }
    }
    return -1;
  }

  private static int near(String stem, Sentence sentence, int place, int length, int reach) {
    int to = Math.min(sentence.stems().size(), place + length + reach);
    for (int i = Math.max(0, place - reach); i < to; i++) {
      boolean itself = i >= place && i < place + length;
      if (!itself && sentence.stems().get(i).equals(stem)) {
        return i;
      }
    }
    return -1;
  }
}
