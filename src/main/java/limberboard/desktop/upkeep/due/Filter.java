package limberboard.desktop.upkeep.due;

import java.util.Optional;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due;

/**
 * Which work is listed.
 *
 * @param who only work that these may do; empty for all
 * @param phase only work of this part of the year; empty for all
 */
record Filter(Optional<Skill> who, Optional<Phase> phase) {
  /** Everything. */
  static final Filter ALL = new Filter(Optional.empty(), Optional.empty());

  boolean shows(Due due) {
    return (who.isEmpty() || who.get() == due.work().details().skill())
        && (phase.isEmpty() || due.phase().isEmpty() || due.phase().equals(phase));
  }
}
