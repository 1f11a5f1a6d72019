package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.workings.QuantityWords;
import limberboard.workings.sums.PutIn;
import limberboard.workings.sums.Reckoning;
import limberboard.workings.sums.Sum;

/** Writes a reckoned working for a terminal: warnings first, then results, inputs and source. */
final class WorkingsText {
  private WorkingsText() {}

  /** The lines. */
  static List<String> of(Sum sum, PutIn put, Reckoning.Done done) {
    List<String> lines = new ArrayList<>();
    lines.add(sum.text().title());
    lines.add("");
    put.notes().forEach(note -> lines.add("! " + note));
    done.answer().warnings().forEach(warning -> lines.add("! " + warning));
    done.answer()
        .results()
        .forEach(each -> lines.add(each.title() + ": " + each.text(QuantityWords.METRIC)));
    lines.add("");
    done.put()
        .forEach(
            each ->
                lines.add(
                    String.format(
                        Locale.ROOT,
                        "  %-12s %s: %s%s",
                        each.input().id(),
                        each.input().title(),
                        each.text(),
                        each.usual() ? " (usual)" : "")));
    lines.add("");
    done.answer().working().forEach(line -> lines.add("  " + line));
    lines.add("");
    lines.add("Formula: " + sum.text().formula());
    lines.add("Holds for: " + sum.text().holds());
    lines.add("Source: " + sum.text().source());
    return lines;
  }
}
