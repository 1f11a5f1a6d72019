package limberboard.upkeep.shopping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** All rules of what must not be mixed; the worst comes first. */
final class MixRules {
  private static final List<MixRule> ALL =
      List.of(
          new SealantRule(),
          new AttackRule(),
          new AnodeRule(),
          new MetalRule(),
          new OilRule(),
          new ChargerRule());

  private MixRules() {}

  static List<MixWarning> judge(Chosen chosen) {
    List<MixWarning> warnings = new ArrayList<>();
    ALL.forEach(rule -> warnings.addAll(rule.judge(chosen)));
    warnings.sort(Comparator.comparing(MixWarning::grade));
    return warnings;
  }
}
