package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import limberboard.boat.Fitting;
import limberboard.boat.Stock;
import limberboard.boat.StockItem;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Mixing;
import limberboard.library.page.Model.Choice;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.words.Sentences;

/**
 * What the rules of mixing look at: the boat, what is on the list with the jobs that need it, and
 * what is in stock. Immutable.
 *
 * @param library where other materials are looked up
 * @param fitting the boat
 * @param jobs each material and tool on the list, with its jobs
 * @param stock what is in stock
 */
record Chosen(
    Library library, Fitting fitting, Map<Page<Material>, List<BoughtFor>> jobs, Stock stock) {

  /** What a material's page says of mixing. */
  static Mixing mixing(Page<Material> page) {
    return page.details().mixing();
  }

  /** Materials of the stock that are not on the list, each once. */
  List<Page<Material>> onlyInStore() {
    List<String> listed = jobs.keySet().stream().map(Page::id).toList();
    Map<String, Page<Material>> found = new LinkedHashMap<>();
    for (StockItem item : stock.items()) {
      if (!listed.contains(item.material().id())) {
        found.putIfAbsent(item.material().id(), item.material());
      }
    }
    return List.copyOf(found.values());
  }

  /** What the boat is made of, as far as its model says, with what is made of it. */
  Map<Substance, List<String>> boat() {
    Map<Substance, List<String>> made = new EnumMap<>(Substance.class);
    fitting
        .boat()
        .model()
        .details()
        .equipment()
        .forEach(
            equipment -> {
              String fitted = fitting.boat().equipment().get(equipment.id());
              for (Choice choice : equipment.choices()) {
                if (Objects.equals(choice.id(), fitted)) {
                  choice
                      .madeOf()
                      .forEach(
                          substance ->
                              made.computeIfAbsent(substance, s -> new ArrayList<>())
                                  .add(Sentences.lowered(choice.title())));
                }
              }
            });
    return made;
  }

  /** Ids of procedures. */
  static List<String> ids(List<BoughtFor> jobs) {
    return jobs.stream().map(job -> job.id()).distinct().toList();
  }

  /** Titles of procedures, as a person lists them. */
  static String titles(List<BoughtFor> jobs) {
    return String.join("; ", jobs.stream().map(job -> job.title()).distinct().toList());
  }
}
