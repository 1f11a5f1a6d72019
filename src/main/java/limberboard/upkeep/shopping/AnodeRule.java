package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.AnodeAlloy;
import limberboard.library.value.Water;
import limberboard.upkeep.shopping.MixWarning.Grade;

/** An anode must suit the boat's water, and all anodes of a boat must be of one alloy. */
final class AnodeRule implements MixRule {
  @Override
  public List<MixWarning> judge(Chosen chosen) {
    List<MixWarning> warnings = new ArrayList<>();
    List<Page<Material>> listed =
        chosen.jobs().keySet().stream().filter(AnodeRule::isAnode).toList();
    List<Page<Material>> stored = chosen.onlyInStore().stream().filter(AnodeRule::isAnode).toList();
    listed.forEach(page -> water(page, "", chosen, warnings));
    stored.forEach(page -> water(page, " from stock", chosen, warnings));
    alloys(listed, stored, chosen, warnings);
    return warnings;
  }

  private static boolean isAnode(Page<Material> page) {
    return Chosen.mixing(page).alloy().isPresent();
  }

  private static AnodeAlloy alloy(Page<Material> page) {
    return Chosen.mixing(page).alloy().orElseThrow();
  }

  private static void water(
      Page<Material> page, String where, Chosen chosen, List<MixWarning> warnings) {
    Water water = chosen.fitting().boat().water();
    List<BoughtFor> jobs = chosen.jobs().getOrDefault(page, List.of());
    AnodeWaters.wrong(alloy(page), water)
        .map(
            wrong ->
                new MixWarning(
                    jobs.isEmpty() ? Grade.TAKE_CARE : wrong.grade(),
                    page.title() + where + " in " + water.spoken() + " water",
                    wrong.why(),
                    MixWarning.PRACTICE,
                    List.of(page.id()),
                    Chosen.ids(jobs)))
        .ifPresent(warnings::add);
  }

  private static void alloys(
      List<Page<Material>> listed,
      List<Page<Material>> stored,
      Chosen chosen,
      List<MixWarning> warnings) {
    Map<String, Page<Material>> all = new LinkedHashMap<>();
    listed.forEach(page -> all.put(page.id(), page));
    stored.forEach(page -> all.put(page.id(), page));
    Set<AnodeAlloy> onList = listed.stream().map(AnodeRule::alloy).collect(Collectors.toSet());
    Set<AnodeAlloy> alloys = new TreeSet<>();
    all.values().forEach(page -> alloys.add(alloy(page)));
    if (alloys.size() < 2 || listed.isEmpty()) {
      return;
    }
    List<BoughtFor> jobs =
        listed.stream().flatMap(page -> chosen.jobs().get(page).stream()).toList();
    warnings.add(
        new MixWarning(
            onList.size() > 1 ? Grade.NEVER : Grade.TAKE_CARE,
            "Anodes of "
                + String.join(" and ", alloys.stream().map(AnodeAlloy::spoken).toList())
                + " on one boat",
            "the more active alloy wears itself out protecting the other anodes; all anodes that"
                + " are joined through the boat's metal are of one alloy",
            MixWarning.PRACTICE,
            List.copyOf(all.keySet()),
            Chosen.ids(jobs)));
  }
}
