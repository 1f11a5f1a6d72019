package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.Substance;
import limberboard.upkeep.shopping.MixWarning.Grade;

/** A charger has to be made for, and set to, the kind of battery on board. */
final class ChargerRule implements MixRule {
  private static final List<Substance> KINDS = List.of(Substance.LEAD, Substance.LITHIUM);
  private static final String SOURCE =
      "ISO 23625 on lithium-ion batteries in small craft, named from memory; else "
          + MixWarning.PRACTICE;

  @Override
  public List<MixWarning> judge(Chosen chosen) {
    Map<Substance, List<String>> boat = chosen.boat();
    List<MixWarning> warnings = new ArrayList<>();
    for (Page<Material> charger : chosen.jobs().keySet()) {
      List<Substance> charges = Chosen.mixing(charger).charges();
      for (Substance kind : KINDS) {
        if (boat.containsKey(kind) && !charges.isEmpty()) {
          boolean made = charges.contains(kind);
          if (!made || charges.size() > 1) {
            warnings.add(warning(charger, kind, boat.get(kind), made, chosen));
          }
        }
      }
    }
    return warnings;
  }

  private static MixWarning warning(
      Page<Material> charger, Substance kind, List<String> there, boolean made, Chosen chosen) {
    String battery = String.join(", ", there);
    return new MixWarning(
        made ? Grade.TAKE_CARE : Grade.NEVER,
        charger.title()
            + (made ? ", not set to " : ", not made for ")
            + kind.spoken()
            + ": "
            + battery,
        why(kind) + (made ? "; set it before it is switched on" : "; take one made for it"),
        SOURCE,
        List.of(charger.id()),
        Chosen.ids(chosen.jobs().get(charger)));
  }

  private static String why(Substance kind) {
    return kind == Substance.LITHIUM
        ? "the equalising and float stages for lead overcharge lithium cells, which may burn"
        : "the voltage for lithium never fills a lead battery or makes it boil dry, and it gives"
            + " off hydrogen";
  }
}
