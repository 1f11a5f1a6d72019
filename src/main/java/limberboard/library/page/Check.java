package limberboard.library.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Likelihood;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Skill;

/**
 * Something to look at, ask or try, that tells causes apart.
 *
 * @param id unique within its page
 * @param ask the question
 * @param how how to do it
 * @param picture relative path to a drawing
 * @param minutes time it takes, without access, greater than 0
 * @param access ids of what must be opened first
 * @param tools tools
 * @param cautions what it names as its cautions
 * @param fits which boats it makes sense on
 * @param skill who may do it
 * @param answers the possible answers, two to six
 * @param finds answer to cause id (or {@link #OTHERS}) to how likely that answer then is
 * @param saidAs answer to phrases people use for it
 * @param cantTell chance that the owner cannot tell
 * @param comesFirst whether safety demands it before any other step
 * @param makeSafe for a check that comes first: what to do so that it is safe, whatever the answer
 * @param safeWhen the answers that themselves say that it is safe
 */
public record Check(
    @Required String id,
    @Required String ask,
    @Required String how,
    @Names(Named.PICTURE) Optional<String> picture,
    @Required Double minutes,
    @Names(Named.ACCESS) List<String> access,
    List<ToolUse> tools,
    List<CautionUse> cautions,
    Condition fits,
    Skill skill,
    @Required List<String> answers,
    Map<String, Map<String, Likelihood>> finds,
    Map<String, List<String>> saidAs,
    Likelihood cantTell,
    boolean comesFirst,
    Optional<String> makeSafe,
    List<String> safeWhen) {

  /** In {@code finds}: all causes that the check does not mention for any answer. */
  public static final String OTHERS = "others";

  /** What is said of a check that comes first once it has been made safe; no answer's name. */
  public static final String MADE_SAFE = "made-safe";

  private static final String KEEP_CLEAR =
      "Keep everybody clear, and let somebody who knows the boat make it safe first.";

  /** Absent entries get their defaults. */
  public Check {
    picture = EmptyValues.optional(picture);
    access = EmptyValues.list(access);
    tools = EmptyValues.list(tools);
    cautions = EmptyValues.list(cautions);
    fits = EmptyValues.condition(fits);
    skill = skill == null ? Skill.OWNER : skill;
    answers = answers == null ? null : EmptyValues.list(answers);
    finds = EmptyValues.map(finds);
    saidAs = EmptyValues.lists(saidAs);
    makeSafe = EmptyValues.optional(makeSafe).filter(text -> !text.isBlank());
    safeWhen = EmptyValues.list(safeWhen);
    cantTell = cantTell == null ? Likelihood.parse("rarely") : cantTell;
  }

  /**
   * What to do so that it is safe, whatever the answer is: empty for a check that does not come
   * first; a general word of warning where its page says nothing.
   */
  public Optional<String> safety() {
    return comesFirst ? Optional.of(makeSafe.orElse(KEEP_CLEAR)) : Optional.empty();
  }

  /** Whether any answer's likelihood is given for a cause, or for {@link #OTHERS}. */
  public boolean mentions(String cause) {
    return finds.values().stream().anyMatch(found -> found.containsKey(cause));
  }

  /** For each answer how likely it is under a cause, or under {@link #OTHERS}. */
  public double[] chances(String cause) {
    return Likelihood.shares(
        answers.stream()
            .map(answer -> finds.getOrDefault(answer, Map.of()).get(cause))
            .map(found -> found == null ? OptionalDouble.empty() : OptionalDouble.of(found.value()))
            .toList());
  }

  /** Whether this answer to a check that comes first says that it is safe. */
  public boolean isSafe(String answer) {
    return safeWhen.contains(answer);
  }
}
