package limberboard.desktop.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.desktop.find.Found.BoatTarget;
import limberboard.desktop.find.Found.MentionedBoat;
import limberboard.desktop.find.Found.PageTarget;
import limberboard.desktop.find.Found.SymptomTarget;
import limberboard.desktop.parts.Card;
import limberboard.library.page.Kind;
import limberboard.search.Hit;
import limberboard.search.SearchResults;

/** Turns hits into what the list shows, boats of that name first. */
final class FoundCards {
  private FoundCards() {}

  /**
   * The list.
   *
   * @param results what was found in the pages
   * @param boats the boats that the text speaks of
   * @param chosen the boat that everything is about
   */
  static List<Found> of(SearchResults results, Boats boats, Optional<Boat> chosen) {
    List<Found> pages = results.hits().stream().map(hit -> of(hit, chosen.isPresent())).toList();
    Optional<String> working = chosen.map(Boat::id);
    List<Found> found = new ArrayList<>();
    if (boats.nothingElse()) {
      boats.meant().forEach(boat -> found.add(boat(boat)));
      found.addAll(pages);
      return List.copyOf(found);
    }
    List<Found> others =
        boats.meant().stream()
            .filter(boat -> !working.equals(Optional.of(boat.id())))
            .map(FoundCards::mentioned)
            .toList();
    boolean chosenIsMeant = others.size() < boats.meant().size();
    found.addAll(chosenIsMeant ? pages : others);
    found.addAll(chosenIsMeant ? others : pages);
    return List.copyOf(found);
  }

  /**
   * The boats that a text speaks of.
   *
   * @param meant the boats, the surest first
   * @param nothingElse whether the text says nothing else
   */
  record Boats(List<Boat> meant, boolean nothingElse) {}

  private static Found boat(Boat boat) {
    Card card = Card.of(boat.name(), boat.particulars());
    return new Found(new BoatTarget(boat.id()), card.ofKind("boat"));
  }

  private static Found mentioned(Boat boat) {
    Card card = Card.of("Working boat: " + boat.name(), boat.particulars());
    return new Found(new MentionedBoat(boat.id()), card.ofKind("boat"));
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
