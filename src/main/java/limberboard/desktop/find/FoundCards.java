package limberboard.desktop.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import limberboard.boat.Boat;
import limberboard.desktop.find.Found.BoatTarget;
import limberboard.desktop.find.Found.PageTarget;
import limberboard.desktop.find.Found.SymptomTarget;
import limberboard.desktop.parts.Card;
import limberboard.library.Kind;
import limberboard.search.Hit;
import limberboard.search.SearchResults;

/** Turns hits into what the list shows, boats of that name first. */
final class FoundCards {
  private FoundCards() {}

  static List<Found> of(String text, SearchResults results, List<Boat> boats, boolean boatChosen) {
    List<Found> found = new ArrayList<>();
    boats.stream().filter(boat -> named(boat, text)).map(FoundCards::of).forEach(found::add);
    results.hits().stream().map(hit -> of(hit, boatChosen)).forEach(found::add);
    return List.copyOf(found);
  }

  private static boolean named(Boat boat, String text) {
    String sought = text.strip().toLowerCase(Locale.ROOT);
    return sought.length() > 1 && boat.name().toLowerCase(Locale.ROOT).startsWith(sought);
  }

  private static Found of(Boat boat) {
    Card card = Card.of(boat.name(), boat.model().title() + ", built " + boat.built());
    return new Found(new BoatTarget(boat.id()), card.ofKind("boat"));
  }

  private static Found of(Hit hit, boolean boatChosen) {
    List<Card.Part> marks =
        hit.passage().marks().stream()
            .map(mark -> new Card.Part(mark.start(), mark.end()))
            .toList();
    boolean fits = hit.fit().fits();
    String note = boatChosen ? reason(hit) : "";
    Card card =
        new Card("", hit.title(), hit.kind().word(), hit.passage().text(), marks, note, !fits);
    return new Found(
        hit.kind() == Kind.SYMPTOM
            ? new SymptomTarget(hit.id(), boatChosen && fits)
            : new PageTarget(hit.id()),
        card);
  }

  private static String reason(Hit hit) {
    String why = hit.fit().reason();
    if (hit.fit().fits()) {
      return why.isEmpty() ? "" : "Fits this boat: " + why;
    }
    return "Not for this boat: " + why;
  }
}
