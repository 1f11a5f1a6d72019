package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.library.value.Interval;
import limberboard.words.PhaseWords;
import limberboard.words.Sentences;
import limberboard.words.TimeWords;
import limberboard.workings.QuantityWords;

/** Intervals in words: {@code every year, ashore with the mast down; from the third season on}. */
final class IntervalWords {
  private final CutContext cutting;

  IntervalWords(CutContext cutting) {
    this.cutting = cutting;
  }

  /** The interval for the boat; without a boat, with all that shortens or lengthens it. */
  String of(Interval interval) {
    List<String> limits = limits(interval);
    String first =
        limits.size() > 1
            ? String.join(" or ", limits) + ", whichever comes first"
            : String.join("", limits);
    List<String> parts = new ArrayList<>();
    parts.add(first + interval.phase().map(phase -> ", " + PhaseWords.of(phase)).orElse(""));
    interval.fromAge().map(TimeWords::from).ifPresent(parts::add);
    if (interval.expires()) {
      parts.add("it runs out by its date even when it has not been used");
    }
    interval.factors().forEach(factor -> factor(factor).ifPresent(parts::add));
    return String.join("; ", parts);
  }

  private static List<String> limits(Interval interval) {
    List<String> limits = new ArrayList<>();
    interval.every().ifPresent(period -> limits.add(TimeWords.every(period)));
    interval.seasons().ifPresent(count -> limits.add(TimeWords.every(count, "season")));
    interval
        .engineHours()
        .ifPresent(hours -> limits.add("every " + QuantityWords.plain(hours) + " engine hours"));
    for (Map.Entry<String, Integer> use : interval.uses().entrySet()) {
      limits.add("every " + use.getValue() + " " + Sentences.spoken(use.getKey()));
    }
    return limits;
  }

  private Optional<String> factor(Interval.Factor factor) {
    String change = factor.change();
    return cutting
        .fitting()
        .map(boat -> boat.judge(factor.when()))
        .map(
            fit ->
                Optional.of(fit)
                    .filter(Fit::fits)
                    .map(yes -> change + " for " + cutting.boatName() + because(yes.reason())))
        .orElseGet(() -> Optional.of(change + " for " + cutting.words().of(factor.when())));
  }

  private static String because(String reason) {
    return reason.isEmpty() ? "" : " (" + reason + ")";
  }
}
