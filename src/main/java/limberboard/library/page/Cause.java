package limberboard.library.page;

import java.util.List;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Interval;
import limberboard.library.value.Likelihood;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Seen;

/**
 * One thing that can be behind a symptom.
 *
 * @param id unique within its page
 * @param title short, in plain words
 * @param about how it comes about and what proves it, or empty
 * @param fits which boats can have it
 * @param weight how common it is against the others, greater than 0: the workshop's estimate
 * @param moreLikely factors for some boats
 * @param mend procedure id
 * @param cures chance that the mend cures it
 * @param seen whether the cure shows at once
 */
public record Cause(
    @Required String id,
    @Required String title,
    String about,
    Condition fits,
    @Required Double weight,
    List<Interval.Factor> moreLikely,
    @Required @Names(Named.PROCEDURE) String mend,
    Likelihood cures,
    Seen seen) {

  /** Absent entries get their defaults. */
  public Cause {
    about = EmptyValues.text(about);
    fits = EmptyValues.condition(fits);
    moreLikely = EmptyValues.list(moreLikely);
    cures = cures == null ? Likelihood.parse("almost-always") : cures;
    seen = seen == null ? Seen.AT_ONCE : seen;
  }
}
