package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.page.Material;
import limberboard.library.page.Mixing;
import limberboard.library.page.Page;
import limberboard.upkeep.shopping.MixWarning.Grade;
import limberboard.words.Sentences;

/** Oils and coolants for the same purpose but of different grades. */
final class OilRule implements MixRule {
  private static final String SOURCE =
      "ISO 3448, SAE J300 and SAE J306 grade oils by viscosity, named from memory; not to mix them"
          + " is "
          + MixWarning.PRACTICE;

  @Override
  public List<MixWarning> judge(Chosen chosen) {
    List<Page<Material>> listed = List.copyOf(chosen.jobs().keySet());
    List<MixWarning> warnings = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      for (int j = i + 1; j < listed.size(); j++) {
        if (clash(listed.get(i), listed.get(j))) {
          warnings.add(warning(listed.get(i), listed.get(j), Grade.NEVER, chosen));
        }
      }
      for (Page<Material> stored : chosen.onlyInStore()) {
        if (clash(listed.get(i), stored)) {
          warnings.add(warning(listed.get(i), stored, Grade.TAKE_CARE, chosen));
        }
      }
    }
    return warnings;
  }

  private static boolean clash(Page<Material> one, Page<Material> other) {
    Mixing a = Chosen.mixing(one);
    Mixing b = Chosen.mixing(other);
    return !a.oil().isEmpty() && a.oil().equals(b.oil()) && !a.grade().equals(b.grade());
  }

  private static MixWarning warning(
      Page<Material> one, Page<Material> other, Grade grade, Chosen chosen) {
    return new MixWarning(
        grade,
        one.title()
            + " and "
            + Sentences.lowered(other.title())
            + (grade == Grade.NEVER ? "" : " from stock")
            + " in one "
            + Chosen.mixing(one).oil()
            + " filling",
        "the mixture is of neither grade and the additives may work against each other; top up only"
            + " with what is in it, or drain and fill anew",
        SOURCE,
        List.of(one.id(), other.id()),
        Chosen.ids(chosen.jobs().get(one)));
  }
}
