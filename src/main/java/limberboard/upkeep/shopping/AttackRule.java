package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.library.page.Material;
import limberboard.library.page.Mixing.Attack;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.upkeep.shopping.MixWarning.Grade;
import limberboard.words.Sentences;

/** Materials that spoil what they touch: in the same job, or elsewhere on this boat. */
final class AttackRule implements MixRule {
  @Override
  public List<MixWarning> judge(Chosen chosen) {
    Map<Substance, List<String>> boat = chosen.boat();
    List<MixWarning> warnings = new ArrayList<>();
    for (Page<Material> page : chosen.jobs().keySet()) {
      for (Attack attack : Chosen.mixing(page).attacks()) {
        List<MixWarning> touching = touching(page, attack, chosen);
        warnings.addAll(touching);
        List<String> there = boat.getOrDefault(attack.what(), List.of());
        if (touching.isEmpty() && !there.isEmpty()) {
          warnings.add(onBoat(page, attack, there, chosen));
        }
      }
    }
    return warnings;
  }

  private static List<MixWarning> touching(Page<Material> page, Attack attack, Chosen chosen) {
    List<MixWarning> warnings = new ArrayList<>();
    for (Page<Material> other : chosen.jobs().keySet()) {
      List<BoughtFor> both = new ArrayList<>(chosen.jobs().get(page));
      both.retainAll(chosen.jobs().get(other));
      if (!both.isEmpty() && Chosen.mixing(other).touches().contains(attack.what())) {
        warnings.add(
            new MixWarning(
                Grade.NEVER,
                page.title()
                    + " on "
                    + attack.what().spoken()
                    + ", which "
                    + Sentences.lowered(other.title())
                    + " lies against ("
                    + Chosen.titles(both)
                    + ")",
                attack.why(),
                sources(page),
                List.of(page.id(), other.id()),
                Chosen.ids(both)));
      }
    }
    return warnings;
  }

  private static MixWarning onBoat(
      Page<Material> page, Attack attack, List<String> there, Chosen chosen) {
    return new MixWarning(
        Grade.TAKE_CARE,
        page.title()
            + " on "
            + attack.what().spoken()
            + ": "
            + chosen.fitting().boat().name()
            + " has it ("
            + String.join(", ", there)
            + ")",
        attack.why(),
        sources(page),
        List.of(page.id()),
        Chosen.ids(chosen.jobs().get(page)));
  }

  /** The page that says so names its sources. */
  private static String sources(Page<Material> page) {
    return page.head().sources().isEmpty()
        ? MixWarning.PRACTICE
        : String.join("; ", page.head().sources());
  }
}
