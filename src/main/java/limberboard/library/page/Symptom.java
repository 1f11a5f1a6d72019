package limberboard.library.page;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/**
 * What an owner notices, with the causes and checks behind it.
 *
 * @param first cautions shown before any question
 * @param causes what can be behind it
 * @param checks what tells the causes apart
 * @param somethingElse weight of a cause that is not on the list, greater than 0; empty: one
 *     twentieth of the sum of the causes' weights
 */
public record Symptom(
    List<CautionUse> first,
    @Required List<Cause> causes,
    @Required List<Check> checks,
    OptionalDouble somethingElse)
    implements Details {

  /** The id of the cause that stands for everything the page does not list. */
  public static final String SOMETHING_ELSE = "something-else";

  /** Absent entries become empty ones. */
  public Symptom {
    first = EmptyValues.list(first);
    causes = causes == null ? null : EmptyValues.list(causes);
    checks = checks == null ? null : EmptyValues.list(checks);
    somethingElse = somethingElse == null ? OptionalDouble.empty() : somethingElse;
  }

  @Override
  public Kind kind() {
    return Kind.SYMPTOM;
  }

  /** The check with this id. */
  public Optional<Check> check(String id) {
    return checks.stream().filter(check -> check.id().equals(id)).findFirst();
  }

  /** The cause with this id; {@link #SOMETHING_ELSE} is not among them. */
  public Optional<Cause> cause(String id) {
    return causes.stream().filter(cause -> cause.id().equals(id)).findFirst();
  }
}
