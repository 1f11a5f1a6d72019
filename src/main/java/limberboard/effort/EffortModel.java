package limberboard.effort;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Everything a {@link Policy} weighs, as numbers: the {@link AnswerModel}, what each check and mend
 * costs in minutes, and the access they share.
 *
 * <p>An access is paid once, by the first step that needs it, and again after a mend whose cure
 * shows only later. The yard can always be called and ends the trace. Immutable.
 */
public final class EffortModel {
  private final AnswerModel answers;
  private final List<CheckEffort> checks;
  private final List<MendEffort> mends;
  private final double[] accessMinutes;
  private final double yardMinutes;
  private final double searchMinutes;
  private final List<BitSet> mendAccess;
  private final int[] mendAccessOf;

  /**
   * What a check costs.
   *
   * @param minutes without access, 0 or more
   * @param access numbers of everything that must be open for it
   * @param cantTell chance that it gives no answer, 0 to 1
   * @param comesFirst whether safety demands it before any other
   */
  public record CheckEffort(double minutes, BitSet access, double cantTell, boolean comesFirst) {
    /** Copies the access. */
    public CheckEffort {
      access = (BitSet) access.clone();
    }
  }

  /**
   * What mending one cause costs.
   *
   * @param minutes without access, 0 or more
   * @param access numbers of everything that must be open for it
   * @param cures chance that it cures the fault when that is the cause, 0 to 1
   * @param byOwner whether the owner may do it; otherwise only the yard cures this cause
   * @param shownAtOnce whether a cure shows at once; otherwise the boat is closed up until it
   *     shows, and nothing is open any more when it did not cure
   * @param canBeNamed whether the yard can be told that this is it; something else has no name
   */
  public record MendEffort(
      double minutes,
      BitSet access,
      double cures,
      boolean byOwner,
      boolean shownAtOnce,
      boolean canBeNamed) {
    /** Copies the access. */
    public MendEffort {
      access = (BitSet) access.clone();
    }

    /** A mend whose cure shows at once, of a cause that has a name. */
    public MendEffort(double minutes, BitSet access, double cures, boolean byOwner) {
      this(minutes, access, cures, byOwner, true, true);
    }

    /** Whether the owner can make it and it may cure. */
    boolean canCure() {
      return byOwner && cures > 0;
    }
  }

  /**
   * Makes a model in which the yard takes the same whatever it is told.
   *
   * @param answers the causes and what answers they give
   * @param checks what each check of {@code answers} costs
   * @param mends what mending each cause of {@code answers} costs
   * @param accessMinutes what each access costs once
   * @param yardMinutes what handing the fault to the yard costs, greater than 0
   * @throws IllegalArgumentException when the numbers of checks or mends do not match
   */
  public EffortModel(
      AnswerModel answers,
      List<CheckEffort> checks,
      List<MendEffort> mends,
      double[] accessMinutes,
      double yardMinutes) {
    this(answers, checks, mends, accessMinutes, yardMinutes, 0);
  }

  /**
   * Makes a model.
   *
   * @param answers the causes and what answers they give
   * @param checks what each check of {@code answers} costs
   * @param mends what mending each cause of {@code answers} costs
   * @param accessMinutes what each access costs once
   * @param yardMinutes what handing the fault to the yard costs, greater than 0
   * @param searchMinutes what it costs more when the yard has to look for the cause itself, because
   *     it was told a wrong one or none, 0 or more
   * @throws IllegalArgumentException when the numbers of checks or mends do not match
   */
  public EffortModel(
      AnswerModel answers,
      List<CheckEffort> checks,
      List<MendEffort> mends,
      double[] accessMinutes,
      double yardMinutes,
      double searchMinutes) {
    if (checks.size() != answers.checks() || mends.size() != answers.causes()) {
      throw new IllegalArgumentException("every check and every cause needs its effort");
    }
    if (!(yardMinutes > 0)) {
      throw new IllegalArgumentException("the yard takes more than 0 minutes, not " + yardMinutes);
    }
    if (!(searchMinutes >= 0)) {
      throw new IllegalArgumentException("a search takes 0 minutes or more, not " + searchMinutes);
    }
    this.answers = answers;
    this.checks = List.copyOf(checks);
    this.mends = List.copyOf(mends);
    this.accessMinutes = accessMinutes.clone();
    this.yardMinutes = yardMinutes;
    this.searchMinutes = searchMinutes;
    Map<BitSet, Integer> numbers = new LinkedHashMap<>();
    this.mendAccessOf = new int[mends.size()];
    for (int mend = 0; mend < mendAccessOf.length; mend++) {
      mendAccessOf[mend] =
          numbers.computeIfAbsent(mends.get(mend).access(), unseen -> numbers.size());
    }
    this.mendAccess = List.copyOf(numbers.keySet());
  }

  /**
   * The same efforts with other chances.
   *
   * @param others of the same causes, checks and answers
   */
  public EffortModel with(AnswerModel others) {
    return new EffortModel(others, checks, mends, accessMinutes, yardMinutes, searchMinutes);
  }

  /** The causes and what answers they give. */
  public AnswerModel answers() {
    return answers;
  }

  /** What each check costs. */
  public List<CheckEffort> checks() {
    return checks;
  }

  /** What mending each cause costs. */
  public List<MendEffort> mends() {
    return mends;
  }

  /** What handing the fault to the yard costs when it is told the right cause, in minutes. */
  public double yardMinutes() {
    return yardMinutes;
  }

  /** What it costs more when the yard has to look for the cause itself, in minutes. */
  public double searchMinutes() {
    return searchMinutes;
  }

  /**
   * What handing the fault to the yard costs on average when the likeliest cause is named to it.
   *
   * @param weights a weight for each cause; the result is multiplied by their sum
   */
  public double handOver(double[] weights) {
    double sum = 0;
    double named = 0;
    for (int cause = 0; cause < weights.length; cause++) {
      sum += weights[cause];
      if (weights[cause] > named && mends.get(cause).canBeNamed()) {
        named = weights[cause];
      }
    }
    return sum * yardMinutes + (sum - named) * searchMinutes;
  }

  /** What handing the fault to the yard costs when this is the cause and is named to it. */
  double handOver(int cause) {
    return yardMinutes + (mends.get(cause).canBeNamed() ? 0 : searchMinutes);
  }

  /** The distinct sets of access that mends need. */
  List<BitSet> mendAccess() {
    return mendAccess;
  }

  /** The number in {@link #mendAccess} of what this mend needs. */
  int mendAccessOf(int mend) {
    return mendAccessOf[mend];
  }

  /**
   * The minutes it takes to open what is not yet open.
   *
   * @param access numbers of what must be open
   * @param open numbers of what is open
   */
  public double accessMinutes(BitSet access, BitSet open) {
    double sum = 0;
    for (int i = access.nextSetBit(0); i >= 0; i = access.nextSetBit(i + 1)) {
      if (!open.get(i)) {
        sum += accessMinutes[i];
      }
    }
    return sum;
  }

  /** What a mend costs with the access that is not yet open, in minutes. */
  double mendMinutes(int cause, BitSet open) {
    MendEffort mend = mends.get(cause);
    return mend.minutes() + accessMinutes(mend.access(), open);
  }

  /** What a check costs with the access that is not yet open, in minutes. */
  double checkMinutes(int check, BitSet open) {
    CheckEffort effort = checks.get(check);
    return effort.minutes() + accessMinutes(effort.access(), open);
  }

  /**
   * What is open after a mend that did not cure: nothing where that shows only later.
   *
   * @param open what was open before
   */
  public BitSet openAfterMend(int cause, BitSet open) {
    MendEffort mend = mends.get(cause);
    return mend.shownAtOnce() ? both(open, mend.access()) : new BitSet();
  }

  /**
   * What is open after a check.
   *
   * @param open what was open before
   */
  public BitSet openAfterCheck(int check, BitSet open) {
    return both(open, checks.get(check).access());
  }

  private static BitSet both(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.or(other);
    return both;
  }

  /**
   * The first check that safety demands and that has not been made; −1 when there is none.
   *
   * @param asked checks that were made
   */
  int demanded(BitSet asked) {
    for (int check = 0; check < checks.size(); check++) {
      if (checks.get(check).comesFirst() && !asked.get(check)) {
        return check;
      }
    }
    return -1;
  }

  /** Where a trace begins: nothing asked, tried or open. */
  public Situation beginning() {
    double[] chances = new double[answers.causes()];
    Arrays.setAll(chances, answers::prior);
    return new Situation(chances, new BitSet(), new BitSet(), new BitSet());
  }

  /** Two models with the same numbers are equal. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof EffortModel that
            && answers.equals(that.answers)
            && checks.equals(that.checks)
            && mends.equals(that.mends)
            && Arrays.equals(accessMinutes, that.accessMinutes)
            && yardMinutes == that.yardMinutes
            && searchMinutes == that.searchMinutes;
  }

  @Override
  public int hashCode() {
    return Objects.hash(answers, checks, mends);
  }
}
