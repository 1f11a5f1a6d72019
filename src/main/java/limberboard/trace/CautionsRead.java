package limberboard.trace;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.boat.WorkCaution;

/**
 * Which cautions a person has read in a trace, and how the questions were answered on which it
 * hangs whether there is an emergency. It says in which form a caution stands from now on; none
 * ever disappears. Immutable.
 *
 * @param read the cautions read, each with its rule: with another rule it is a new one
 * @param emergencies by the caution's id, whether its question was answered with yes
 */
public record CautionsRead(Set<Read> read, Map<String, Boolean> emergencies) {
  /** Nothing read, nothing answered. */
  public static final CautionsRead NONE = new CautionsRead(Set.of(), Map.of());

  /** Copies both. */
  public CautionsRead {
    read = Set.copyOf(read);
    emergencies = Map.copyOf(emergencies);
  }

  /**
   * A caution that was read.
   *
   * @param caution its id
   * @param rule the rule it was read with
   */
  public record Read(String caution, String rule) {
    static Read of(WorkCaution caution) {
      return new Read(caution.id(), caution.rule());
    }
  }

  /** How a caution stands. */
  public enum Form {
    /** The question on which it hangs whether there is an emergency, and nothing else. */
    QUESTION,
    /** Everything it says, before everything else: an emergency that nobody has read. */
    WHOLE,
    /** The danger and the rule. */
    SHORT,
    /** Its name in one line: it has been read, or its question was answered with no. */
    FOLDED
  }

  /** How a caution stands now. */
  public Form form(WorkCaution caution) {
    if (!caution.emergency()) {
      return isRead(caution) ? Form.FOLDED : Form.SHORT;
    }
    Optional<Boolean> yes = answer(caution);
    if (caution.question().isPresent() && yes.isEmpty()) {
      return Form.QUESTION;
    }
    return isRead(caution) || !yes.orElse(true) ? Form.FOLDED : Form.WHOLE;
  }

  /** Whether it has been read, with the same rule. */
  public boolean isRead(WorkCaution caution) {
    return read.contains(Read.of(caution));
  }

  /** Whether the question on which an emergency hangs was answered with yes; empty: not yet. */
  public Optional<Boolean> answer(WorkCaution caution) {
    return caution.question().flatMap(asked -> Optional.ofNullable(emergencies.get(caution.id())));
  }

  /** Those that stand in this form, in their order. */
  public List<WorkCaution> in(Form form, List<WorkCaution> cautions) {
    return cautions.stream().filter(caution -> form(caution) == form).toList();
  }

  /** The same when these have been read. */
  public CautionsRead with(Collection<WorkCaution> cautions) {
    Set<Read> more = new HashSet<>(read);
    cautions.stream().map(Read::of).forEach(more::add);
    return new CautionsRead(more, emergencies);
  }

  /** The same with its question answered. An emergency is to be read now, whatever was before. */
  public CautionsRead answered(WorkCaution caution, boolean yes) {
    Map<String, Boolean> answers = new TreeMap<>(emergencies);
    answers.put(caution.id(), yes);
    return new CautionsRead(yes ? without(caution) : read, answers);
  }

  private Set<Read> without(WorkCaution caution) {
    return read.stream().filter(each -> !each.equals(Read.of(caution))).collect(Collectors.toSet());
  }

  /** The same with its question to be asked again. */
  public CautionsRead askedAgain(WorkCaution caution) {
    Map<String, Boolean> answers = new TreeMap<>(emergencies);
    answers.remove(caution.id());
    return new CautionsRead(read, answers);
  }

  /** Why a folded one is folded, in words: {@code read}, or its question with its answer. */
  public String why(WorkCaution caution) {
    String asked = caution.question().orElse("");
    return answer(caution).map(yes -> asked + (yes ? " Yes; read" : " No")).orElse("read");
  }
}
