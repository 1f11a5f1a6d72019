package limberboard.desktop.upkeep.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.Start;
import limberboard.words.DayText;

/**
 * What there is on the list, in a sentence.
 *
 * @param model the list
 */
record DueSummary(DueModel model) {

  /** The season and how much there is of each group. */
  String words() {
    Optional<Upkeep> known = model.upkeep().upkeep();
    if (known.isEmpty()) {
      return "Working out what is due …";
    }
    List<String> parts = new ArrayList<>();
    part(parts, model.count(Group.OVERDUE), "overdue");
    part(parts, model.count(Group.NOT_KNOWN), "not known: look first");
    part(parts, model.count(Group.THIS_SEASON), "for this season");
    part(parts, model.count(Group.UNKNOWN), "about which the log does not tell");
    part(parts, model.count(Group.OPTIONAL), "optional");
    return season(known.get())
        + (parts.isEmpty() ? "" : " " + String.join(", ", parts) + ".")
        + start(known.get())
        + (model.keptBack() == 0 ? "" : " " + model.keptBack() + " not shown by this choice.");
  }

  /** How to begin a bought boat's log, while nobody has. */
  private String start(Upkeep upkeep) {
    return new Start(upkeep).hint(id -> "press What is known, above").map(" "::concat).orElse("");
  }

  private static String season(Upkeep upkeep) {
    AfloatSeason season = upkeep.thisSeason();
    return "Season "
        + season.label()
        + ": afloat from "
        + DayText.written(season.from())
        + " to "
        + DayText.written(season.to())
        + (upkeep.seasons().areAssumed() ? ", assumed, because her particulars give none." : ".");
  }

  private static void part(List<String> parts, int count, String what) {
    if (count > 0) {
      parts.add(count + " " + what);
    }
  }

  /** What to say when the list is empty, or nothing. */
  String nothing() {
    Optional<Upkeep> known = model.upkeep().upkeep();
    if (known.isEmpty() || !model.rows().isEmpty()) {
      return "";
    } else if (known.get().all().isEmpty()) {
      return "No page that fits this boat says how often its work is done, so nothing is due. Pages"
          + " of procedures say so with an interval.";
    } else if (model.keptBack() > 0) {
      return "Nothing on the list for this choice. Choose “For anybody”, “All year” and “However"
          + " needed” to see everything.";
    }
    return "Nothing is due this season. Everything that has an interval is done.";
  }
}
