package limberboard.drill.learn;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.words.DayWords;
import limberboard.words.PerCent;

/**
 * Which drill a student should play next: of the symptoms that are new to the student or have come
 * back by the {@link RepeatRule}, the one that is expected to cost most, since most can be learnt
 * there; where none has come back, the one that does so first. Of its boats the one drilled least.
 *
 * @param progress of the student
 * @param can what can be drilled
 * @param today the day
 */
public record NextDrill(Progress progress, List<Can> can, LocalDate today) {
  /** Copies the list. */
  public NextDrill {
    can = List.copyOf(can);
  }

  /**
   * Something that can be drilled.
   *
   * @param symptom symptom id
   * @param system what its page is filed under, or empty
   * @param boat id of a boat that it fits
   */
  public record Can(String symptom, String system, String boat) {}

  /**
   * What is chosen.
   *
   * @param what the drill
   * @param why the reason, in a sentence
   */
  public record Chosen(Can what, String why) {}

  /** The next drill; empty where nothing can be drilled. */
  public Optional<Chosen> chosen() {
    Comparator<Can> most =
        Comparator.comparingDouble((Can each) -> -expected(each))
            .thenComparingLong(this::drilledOn)
            .thenComparing(Can::symptom);
    Optional<Can> due = can.stream().filter(this::isDue).min(most);
    return due.map(each -> new Chosen(each, why(each)))
        .or(
            () ->
                can.stream()
                    .min(Comparator.comparing(this::back).thenComparing(most))
                    .map(each -> new Chosen(each, early(each))));
  }

  private double expected(Can each) {
    return progress.expectedShare(each.symptom(), each.system());
  }

  private LocalDate back(Can each) {
    return progress.repeat(each.symptom(), today).due();
  }

  private boolean isDue(Can each) {
    return !back(each).isAfter(today);
  }

  private long drilledOn(Can each) {
    return progress.drills().stream()
        .filter(drill -> drill.symptom().equals(each.symptom()) && drill.boat().equals(each.boat()))
        .count();
  }

  private String why(Can each) {
    boolean isNew =
        progress.drills().stream().noneMatch(drill -> drill.symptom().equals(each.symptom()));
    return (isNew ? "It is new" : "It has come back")
        + ", and most is to be learnt there: about "
        + PerCent.words(expected(each))
        + " more than the best plan would take is expected (an estimate).";
  }

  private String early(Can each) {
    return "Nothing has come back yet; this one does first, on " + DayWords.of(back(each)) + ".";
  }
}
