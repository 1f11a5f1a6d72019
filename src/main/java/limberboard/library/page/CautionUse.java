package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * A caution that a page names; written as its id alone or as {@code {use: id, rule: …}}.
 *
 * @param use caution id
 * @param rule the one rule that matters for this work; empty: the caution's own
 * @param fits which boats it holds for
 * @param at words of a step at which it bites, besides the caution's own
 * @param from of a material: the least amount at which it holds
 * @param question of a symptom (key {@code if}): what must be answered with yes for it to be an
 *     emergency; empty: it may be one as it stands
 */
public record CautionUse(
    @Required @Names(Named.CAUTION) String use,
    String rule,
    Condition fits,
    List<String> at,
    Optional<Amount.Fixed> from,
    @JsonProperty("if") String question) {
  /** Absent entries become empty ones. */
  public CautionUse {
    rule = EmptyValues.text(rule);
    fits = EmptyValues.condition(fits);
    at = EmptyValues.list(at);
    from = EmptyValues.optional(from);
    question = EmptyValues.text(question);
  }

  /** A caution that holds for every boat, with its own rule. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static CautionUse always(String use) {
    return new CautionUse(use, "", Condition.ALWAYS, List.of(), Optional.empty(), "");
  }

  /** The ids of those that are named, in their order. */
  public static List<String> ids(List<CautionUse> uses) {
    return uses.stream().map(CautionUse::use).toList();
  }
}
