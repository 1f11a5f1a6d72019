package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Row;
import limberboard.upkeep.TimeLine.Season;
import limberboard.words.CountWords;
import limberboard.words.DayWords;
import limberboard.words.Minutes;

/** A time line in words, for whoever does not see the drawing. Stateless. */
public final class TimeLineWords {
  private TimeLineWords() {}

  /** A season and its work in a sentence. */
  public static String season(Season season) {
    return "Season "
        + season.season().label()
        + ", afloat from "
        + DayWords.of(season.season().from())
        + " to "
        + DayWords.of(season.season().to())
        + ": "
        + CountWords.of(season.jobs(), "piece of work", "pieces of work")
        + ", "
        + Minutes.words(season.minutes())
        + " without opening what is in the way";
  }

  /** When a piece of work comes, in words: {@code overdue, 25 Nov 2026, 12 Mar 2028}. */
  public static String when(Row row) {
    List<String> parts = new ArrayList<>();
    if (!row.note().isEmpty()) {
      parts.add(row.note());
    }
    row.runs().forEach(run -> parts.add(run.times() + " times in " + run.season()));
    row.days().forEach(day -> parts.add(DayWords.of(day)));
    return String.join(", ", parts);
  }

  /** What a drawing of it shows, in a few sentences. */
  public static String summary(TimeLine line) {
    return "Upkeep of "
        + line.boat()
        + " from "
        + DayWords.of(line.on())
        + " on. "
        + line.seasons().stream().map(TimeLineWords::season).collect(Collectors.joining(". "))
        + "."
        + (line.later() == 0 ? "" : " " + line.later() + " more only after these seasons.");
  }
}
