package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.upkeep.shopping.MixWarning.Grade;
import limberboard.words.Sentences;

/** Stainless steel against aluminium or carbon needs something between that keeps water out. */
final class MetalRule implements MixRule {
  private static final String SOURCE =
      "MIL-STD-889 for which metals must be kept apart, named from memory; the remedy is "
          + MixWarning.PRACTICE;
  private static final Map<Substance, String> WHY =
      Map.of(
          Substance.ALUMINIUM,
          "the aluminium turns to white powder round the steel and the thread seizes",
          Substance.CARBON,
          "carbon is nobler than either metal: in a wet hole the fastener corrodes in its crevice"
              + " and aluminium beside it faster still");

  @Override
  public List<MixWarning> judge(Chosen chosen) {
    Map<Substance, List<String>> boat = chosen.boat();
    List<MixWarning> warnings = new ArrayList<>();
    for (Substance metal : List.of(Substance.ALUMINIUM, Substance.CARBON)) {
      List<String> there = boat.getOrDefault(metal, List.of());
      for (Page<Material> page : chosen.jobs().keySet()) {
        boolean stainless = Chosen.mixing(page).metal().equals(Optional.of(Substance.STAINLESS));
        if (stainless && !there.isEmpty()) {
          warnings.add(warning(page, metal, there, chosen));
        }
      }
    }
    return warnings;
  }

  private static MixWarning warning(
      Page<Material> page, Substance metal, List<String> there, Chosen chosen) {
    List<BoughtFor> jobs = chosen.jobs().get(page);
    return new MixWarning(
        Grade.TAKE_CARE,
        page.title()
            + " in "
            + metal.spoken()
            + ": "
            + chosen.fitting().boat().name()
            + " has it ("
            + String.join(", ", there)
            + ")",
        WHY.get(metal) + "; " + remedy(jobs, chosen),
        SOURCE,
        List.of(page.id()),
        Chosen.ids(jobs));
  }

  private static String remedy(List<BoughtFor> jobs, Chosen chosen) {
    List<BoughtFor> bare = new ArrayList<>(jobs);
    for (Map.Entry<Page<Material>, List<BoughtFor>> entry : chosen.jobs().entrySet()) {
      if (Chosen.mixing(entry.getKey()).insulates()) {
        bare.removeAll(entry.getValue());
      }
    }
    String put = "put " + insulators(chosen) + " on the faces and threads where the two meet";
    return bare.isEmpty()
        ? put + "; it is on this list"
        : put + "; it is not among the materials of: " + Chosen.titles(bare);
  }

  private static String insulators(Chosen chosen) {
    List<String> titles =
        chosen.library().all(Material.class).stream()
            .filter(page -> Chosen.mixing(page).insulates())
            .map(page -> Sentences.lowered(page.title()))
            .toList();
    return titles.isEmpty() ? "an insulating paste or sleeve" : String.join(" or ", titles);
  }
}
