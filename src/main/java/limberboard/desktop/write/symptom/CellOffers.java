package limberboard.desktop.write.symptom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.header.Ids;
import limberboard.library.page.Model;
import limberboard.library.page.Procedure;
import limberboard.library.value.Likelihood;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.writing.symptom.LikelihoodKeys;

/**
 * What can be chosen for a cell, for what has been typed of it so far.
 *
 * @param library the pages there are
 */
record CellOffers(Library library) {
  private static final int MOST = 60;

  /**
   * Something that can be chosen.
   *
   * @param text what then stands in the cell
   * @param words as it is shown
   */
  record Offer(String text, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  /** The offers, the best first; none where anything can be typed. */
  List<Offer> of(TableCell cell, String typed) {
    if (cell instanceof TableCell.Word) {
      return likelihoods(typed);
    } else if (cell instanceof TableCell.Mend) {
      return mends(typed);
    }
    return cell instanceof TableCell.Zones ? zones(typed) : List.of();
  }

  private static List<Offer> likelihoods(String typed) {
    String word = typed.strip().toLowerCase(Locale.ROOT);
    List<Offer> offers = new ArrayList<>();
    Likelihood.scale()
        .forEach(
            (text, value) -> {
              String spoken = Sentences.spoken(text);
              if (spoken.startsWith(word) || spoken.contains(" " + word)) {
                offers.add(
                    new Offer(
                        spoken,
                        spoken
                            + "  \u2013  "
                            + PerCent.words(value)
                            + "  \u2013  "
                            + String.join(", ", LikelihoodKeys.keys(text))));
              }
            });
    return offers;
  }

  private List<Offer> mends(String typed) {
    List<String> words = List.of(typed.toLowerCase(Locale.ROOT).split("[\\s-]+"));
    List<Offer> offers = new ArrayList<>(pages(typed, words));
    if (Ids.isId(typed.strip()) && typed.contains("-") && library.page(typed.strip()).isEmpty()) {
      offers.add(new Offer(typed.strip(), typed.strip() + "  \u2013  a page yet to be written"));
    }
    return offers;
  }

  private List<Offer> pages(String typed, List<String> words) {
    return library.all(Procedure.class).stream()
        .map(page -> new Offer(page.id(), page.title() + "  \u2013  " + page.id()))
        .filter(offer -> fits(offer, words))
        .sorted(Comparator.comparing((Offer offer) -> !offer.text().equals(typed.strip())))
        .limit(MOST)
        .toList();
  }

  private static boolean fits(Offer offer, List<String> words) {
    String all = " " + offer.words().toLowerCase(Locale.ROOT).replace('-', ' ');
    return words.stream().allMatch(word -> all.contains(" " + word));
  }

  /** The zones of all models; of several that are typed, the last is being chosen. */
  private List<Offer> zones(String typed) {
    int last = Math.max(typed.lastIndexOf(','), typed.lastIndexOf(' ')) + 1;
    String before = typed.substring(0, last);
    String word = typed.substring(last).strip().toLowerCase(Locale.ROOT);
    TreeMap<String, String> titles = new TreeMap<>();
    library
        .all(Model.class)
        .forEach(
            page ->
                page.details().drawnZones().forEach(z -> titles.putIfAbsent(z.id(), z.title())));
    Set<String> chosen = Set.of(before.split("[,\\s]+"));
    return titles.entrySet().stream()
        .filter(zone -> !chosen.contains(zone.getKey()))
        .filter(zone -> matches(zone.getKey() + " " + zone.getValue(), word))
        .map(
            zone ->
                new Offer(before + zone.getKey(), zone.getValue() + "  \u2013  " + zone.getKey()))
        .limit(MOST)
        .toList();
  }

  private static boolean matches(String text, String word) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[\\s-]+"))
            .anyMatch(each -> each.startsWith(word))
        || text.startsWith(word);
  }
}
