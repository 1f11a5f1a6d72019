package limberboard.desktop.upkeep.due;

import java.util.Optional;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due;

/**
 * Which work is listed.
 *
 * @param who only work that these may do; empty for all
 * @param phase only work of this part of the year; empty for all
 * @param need only work that is needed so much; of a round and all that is done with it, what any
 *     of it is; empty for all
 */
record Filter(Optional<Skill> who, Optional<Phase> phase, Optional<Need> need) {
  /** Everything. */
  static final Filter ALL = new Filter(Optional.empty(), Optional.empty(), Optional.empty());

  /** The same for others. */
  Filter by(Optional<Skill> other) {
    return new Filter(other, phase, need);
  }

  /** The same in another part of the year. */
  Filter in(Optional<Phase> other) {
    return new Filter(who, other, need);
  }

  /** The same for what is needed otherwise. */
  Filter needed(Optional<Need> other) {
    return new Filter(who, phase, other);
  }

  boolean shows(Due due) {
    return (who.isEmpty() || who.get() == due.skill())
        && (phase.isEmpty() || due.phase().isEmpty() || due.phase().equals(phase))
        && (need.isEmpty() || due.all().stream().anyMatch(each -> each.need() == need.get()));
  }
}
