package limberboard.library.page;

import java.util.Map;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * A sum shown on a page (key {@code workings}). Which sums there are, and what they take, is known
 * one layer up.
 *
 * @param use the sum's id
 * @param title what it is reckoned for here, or empty
 * @param with what is put in: input id to a quantity, the name of a measure of the boat's model, or
 *     a word of a choice, which reads like a measure's name
 * @param fits which boats it is shown for
 */
public record SumUse(
    @Required @Names(Named.SUM) String use,
    String title,
    Map<String, Amount> with,
    Condition fits) {
  /** Absent entries become empty ones. */
  public SumUse {
    title = EmptyValues.text(title);
    with = EmptyValues.map(with);
    fits = EmptyValues.condition(fits);
  }
}
