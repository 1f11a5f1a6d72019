package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalInt;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;
import limberboard.library.value.Within;

/**
 * A course: drills in order, with what is taught at each. What is taught is for the trainer, and no
 * page shows it.
 *
 * @param learners for whom it is (key {@code for})
 * @param hours how long it takes with its breaks, greater than 0
 * @param drills its drills, in order
 */
public record Course(
    @Required @JsonProperty("for") String learners,
    @Required Double hours,
    @Required List<Lesson> drills)
    implements Details {
  /** The longest course, in hours: a week. */
  public static final int MOST_HOURS = 60;

  /** The longest drill of a course, in minutes of class. */
  public static final int MOST_MINUTES = 480;

  /** The smallest number that stands for a cause. */
  public static final int LEAST_HIDDEN = 100_000;

  /** The largest number that stands for a cause. */
  public static final int MOST_HIDDEN = 999_999;

  private static final int MINUTES_OF_HOUR = 60;

  /** Absent entries become empty ones. */
  public Course {
    drills = drills == null ? null : EmptyValues.list(drills);
  }

  /**
   * A drill of a course.
   *
   * @param symptom symptom id
   * @param boat boat id; of a boat that nobody has entered, the words that say all of her
   * @param seed what chance comes from, 0 or more
   * @param hides the number that stands for the cause that is hidden; empty: the seed draws it
   * @param minutes how long it takes in class, with what is taught
   * @param teach what the trainer says
   */
  public record Lesson(
      @Required @Names(Named.SYMPTOM) String symptom,
      @Required String boat,
      @Required @Within(least = 0, most = 1_000_000_000) Integer seed,
      @Within(least = LEAST_HIDDEN, most = MOST_HIDDEN) OptionalInt hides,
      @Required @Within(least = 1, most = MOST_MINUTES) Integer minutes,
      @Required Teach teach) {
    /** Absent entries become empty ones. */
    public Lesson {
      hides = hides == null ? OptionalInt.empty() : hides;
    }
  }

  /**
   * What the trainer says and shows, a paragraph each.
   *
   * @param before before the drill is played
   * @param after when it has been gone through
   */
  public record Teach(List<String> before, List<String> after) {
    /** Absent entries become empty ones. */
    public Teach {
      before = EmptyValues.list(before);
      after = EmptyValues.list(after);
    }
  }

  /** Minutes of all drills together. */
  public int drillMinutes() {
    return drills.stream().mapToInt(Lesson::minutes).sum();
  }

  /** Minutes left for the beginning, the breaks and the end; negative when there are too few. */
  public int otherMinutes() {
    return (int) Math.round(hours * MINUTES_OF_HOUR) - drillMinutes();
  }

  @Override
  public Kind kind() {
    return Kind.COURSE;
  }
}
