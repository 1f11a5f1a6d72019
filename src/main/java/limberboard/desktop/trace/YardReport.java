package limberboard.desktop.trace;

import limberboard.boat.Boat;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.words.PerCent;

/**
 * What was found, as plain text for the yard: the boat, the symptom, the answers, the causes.
 *
 * @param trace the trace
 */
record YardReport(Trace trace) {
  private static final double MENTIONED = 0.02;

  String text() {
    Boat boat = trace.fault().fitting().boat();
    StringBuilder text = new StringBuilder();
    text.append(trace.fault().page().title())
        .append("\nBoat: ")
        .append(boat.name())
        .append(", ")
        .append(boat.particulars())
        .append("\n\nAnswers:\n");
    for (TrailEntry entry : trace.trail()) {
      text.append("- ").append(entry.text()).append(' ').append(entry.answer()).append('\n');
    }
    text.append("\nCauses, with chances worked out from ")
        .append(trace.fault().chancesFrom())
        .append(", and from the answers:\n");
    for (RankedCause ranked : trace.ranking()) {
      if (ranked.chance() >= MENTIONED) {
        text.append("- ")
            .append(ranked.cause().title())
            .append(": ")
            .append(PerCent.words(ranked.chance()))
            .append('\n');
      }
    }
    return text.toString();
  }
}
