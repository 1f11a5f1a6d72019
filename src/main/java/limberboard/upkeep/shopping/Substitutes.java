package limberboard.upkeep.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.words.Sentences;

/** Looks at what may be taken instead of a material, and what speaks against it. */
record Substitutes(Chosen chosen, LocalDate today) {

  /** The substitutes that the material's page names. */
  List<Substitute> of(Page<Material> material, List<Usage> uses) {
    List<BoughtFor> jobs = uses.stream().map(Usage::by).distinct().toList();
    LocalDate day =
        uses.stream().map(use -> use.by().day()).min(LocalDate::compareTo).orElse(today);
    List<Substitute> substitutes = new ArrayList<>();
    for (String id : material.details().instead()) {
      Optional<Page<Material>> page = chosen.library().material(id);
      page.map(found -> substitute(found, material, jobs, day)).ifPresent(substitutes::add);
    }
    return substitutes;
  }

  private Substitute substitute(
      Page<Material> page, Page<Material> instead, List<BoughtFor> jobs, LocalDate day) {
    List<String> against = new ArrayList<>();
    fits(page).ifPresent(against::add);
    water(page).ifPresent(against::add);
    attacks(page, jobs, against);
    sealants(page, instead, jobs, against);
    return new Substitute(page, page.head().summary(), against, spare(page, day));
  }

  /** What the stock has of it; nothing where the list itself needs it. */
  private double spare(Page<Material> page, LocalDate day) {
    return chosen.jobs().containsKey(page)
        ? 0
        : new StockOnHand(page.details(), chosen.stock().of(page), today).amount(day);
  }

  private Optional<String> fits(Page<Material> page) {
    Fit fit = chosen.fitting().judge(page.head().fits());
    return fit.fits() ? Optional.empty() : Optional.of("not for this boat: " + fit.reason());
  }

  private Optional<String> water(Page<Material> page) {
    return Chosen.mixing(page)
        .alloy()
        .flatMap(alloy -> AnodeWaters.wrong(alloy, chosen.fitting().boat().water()))
        .map(AnodeWaters.Wrong::why);
  }

  /** What the substitute would spoil in these jobs. */
  private void attacks(Page<Material> page, List<BoughtFor> jobs, List<String> against) {
    for (Page<Material> other : together(jobs)) {
      for (Substance touched : Chosen.mixing(other).touches()) {
        Chosen.mixing(page)
            .attackOn(touched)
            .map(attack -> "not on " + touched.spoken() + ": " + attack.why())
            .filter(why -> !against.contains(why))
            .ifPresent(against::add);
      }
    }
  }

  /** Which other sealant of these jobs it does not go with. */
  private void sealants(
      Page<Material> page, Page<Material> instead, List<BoughtFor> jobs, List<String> against) {
    for (Page<Material> other : together(jobs)) {
      boolean both =
          !other.id().equals(instead.id())
              && Chosen.mixing(page).family().isPresent()
              && Chosen.mixing(other).family().isPresent();
      if (both) {
        SealantPairs.why(
                Chosen.mixing(page).family().orElseThrow(),
                Chosen.mixing(other).family().orElseThrow())
            .map(why -> "not beside " + Sentences.lowered(other.title()) + ": " + why)
            .ifPresent(against::add);
      }
    }
  }

  private List<Page<Material>> together(List<BoughtFor> jobs) {
    return chosen.jobs().entrySet().stream()
        .filter(entry -> entry.getValue().stream().anyMatch(jobs::contains))
        .map(Map.Entry::getKey)
        .toList();
  }
}
