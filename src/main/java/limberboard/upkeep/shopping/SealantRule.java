package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.upkeep.shopping.MixWarning.Grade;
import limberboard.words.Sentences;

/** Families of sealant that spoil each other: in one job, or on one list. */
final class SealantRule implements MixRule {
  @Override
  public List<MixWarning> judge(Chosen chosen) {
    List<Page<Material>> sealants =
        chosen.jobs().keySet().stream()
            .filter(page -> Chosen.mixing(page).family().isPresent())
            .toList();
    List<MixWarning> warnings = new ArrayList<>();
    for (int i = 0; i < sealants.size(); i++) {
      for (int j = i + 1; j < sealants.size(); j++) {
        pair(sealants.get(i), sealants.get(j), chosen).ifPresent(warnings::add);
      }
    }
    return warnings;
  }

  private static Optional<MixWarning> pair(
      Page<Material> one, Page<Material> other, Chosen chosen) {
    List<BoughtFor> both = new ArrayList<>(chosen.jobs().get(one));
    both.retainAll(chosen.jobs().get(other));
    return SealantPairs.why(
            Chosen.mixing(one).family().orElseThrow(), Chosen.mixing(other).family().orElseThrow())
        .map(why -> warning(one, other, both, why));
  }

  private static MixWarning warning(
      Page<Material> one, Page<Material> other, List<BoughtFor> both, String why) {
    String pair = one.title() + " and " + Sentences.lowered(other.title());
    return new MixWarning(
        both.isEmpty() ? Grade.TAKE_CARE : Grade.NEVER,
        both.isEmpty()
            ? pair + " are both on this list, for different work"
            : pair + " in the same joint (" + Chosen.titles(both) + ")",
        why,
        MixWarning.PRACTICE,
        List.of(one.id(), other.id()),
        Chosen.ids(both));
  }
}
