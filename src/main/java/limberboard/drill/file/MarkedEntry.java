package limberboard.drill.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.MistakeKind;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;

/** A drill with its marks in a student's file; the keys are the components' names. */
record MarkedEntry(
    @Required String symptom,
    @Required String boat,
    String system,
    @Required LocalDate played,
    @Required String seed,
    @Required Double expected,
    @Required Double regret,
    Map<String, Double> mistakes,
    String dangers,
    List<String> said) {
  private static final Pattern SAID =
      Pattern.compile("(\\d{1,3}) % (right|wrong), known (\\d{1,3}) %");
  private static final double HUNDRED = 100;

  MarkedEntry {
    system = EmptyValues.text(system);
    mistakes = EmptyValues.map(mistakes);
    dangers = EmptyValues.text(dangers);
    said = EmptyValues.list(said);
  }

  /** The keys in order, as they are written. */
  static Map<String, Object> keys(DrillRecord drill, long seed) {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("symptom", drill.symptom());
    keys.put("boat", drill.boat());
    if (!drill.system().isEmpty()) {
      keys.put("system", drill.system());
    }
    keys.put("played", drill.played().toString());
    keys.put("seed", seed);
    keys.put("expected", tenths(drill.expected()));
    keys.put("regret", tenths(drill.regret()));
    if (!drill.mistakes().isEmpty()) {
      Map<String, Object> mistakes = new LinkedHashMap<>();
      for (MistakeKind kind : MistakeKind.values()) {
        if (drill.mistakes().containsKey(kind)) {
          mistakes.put(kind.word(), tenths(drill.mistakes().get(kind)));
        }
      }
      keys.put("mistakes", mistakes);
    }
    if (drill.dangers() > 0) {
      keys.put("dangers", drill.dangers());
    }
    if (!drill.certainties().isEmpty()) {
      keys.put("said", drill.certainties().stream().map(MarkedEntry::written).toList());
    }
    return keys;
  }

  private static double tenths(double number) {
    return Math.rint(number * 10) / 10;
  }

  private static String written(Certainty each) {
    return String.format(
        Locale.ROOT,
        "%d %% %s, known %d %%",
        Math.round(HUNDRED * each.said()),
        each.right() ? "right" : "wrong",
        Math.round(HUNDRED * each.known()));
  }

  /**
   * What it says.
   *
   * @throws IllegalArgumentException when something is not as it is written
   */
  DrillRecord drill() {
    Map<MistakeKind, Double> kinds = new EnumMap<>(MistakeKind.class);
    mistakes.forEach((word, cost) -> kinds.put(kind(word), cost));
    List<Certainty> certainties = new ArrayList<>();
    for (String each : said) {
      Matcher read = SAID.matcher(each);
      if (!read.matches()) {
        throw new IllegalArgumentException(
            "\"" + each + "\" is not written as \"70 % right, known 65 %\"");
      }
      certainties.add(
          new Certainty(
              Integer.parseInt(read.group(1)) / HUNDRED,
              read.group(2).equals("right"),
              Integer.parseInt(read.group(3)) / HUNDRED));
    }
    if (!dangers.isEmpty() && !dangers.matches("[0-9]{1,4}")) {
      throw new IllegalArgumentException("\"" + dangers + "\" is no number of dangers");
    }
    return new DrillRecord(
        symptom,
        boat,
        system,
        played,
        expected,
        regret,
        kinds,
        dangers.isEmpty() ? 0 : Integer.parseInt(dangers),
        certainties);
  }

  private static MistakeKind kind(String word) {
    for (MistakeKind kind : MistakeKind.values()) {
      if (kind.word().equals(word)) {
        return kind;
      }
    }
    throw new IllegalArgumentException("\"" + word + "\" is no kind of mistake");
  }
}
