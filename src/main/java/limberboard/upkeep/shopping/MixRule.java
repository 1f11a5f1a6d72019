package limberboard.upkeep.shopping;

import java.util.List;

/** One rule of what must not be mixed. */
interface MixRule {
  /** What the rule has to say of a list. */
  List<MixWarning> judge(Chosen chosen);
}
