package limberboard.desktop.trace;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.library.Model.Zone;

/**
 * Where on the boat something is noticed, and the symptoms to choose from there. For the event
 * thread only.
 */
public final class Whereabouts {
  private final Session session;
  private final Runnable changed;
  private Optional<String> zone = Optional.empty();
  private boolean everything;

  /**
   * No zone chosen.
   *
   * @param session tells library and boat
   * @param changed called after each change
   */
  Whereabouts(Session session, Runnable changed) {
    this.session = session;
    this.changed = changed;
  }

  /** The zones of the chosen boat's model. */
  public List<Zone> zones() {
    return session.boat().map(boat -> boat.model().details().places()).orElse(List.of());
  }

  /** What a zone of the chosen boat's model is called. */
  public String title(String id) {
    return session
        .boat()
        .flatMap(boat -> boat.model().details().zone(id))
        .map(Zone::title)
        .orElse(id);
  }

  /** The chosen zone. */
  public Optional<String> zone() {
    return zone;
  }

  /** Chooses a zone, or none. */
  public void choose(Optional<String> id) {
    if (!id.equals(zone)) {
      zone = id;
      changed.run();
    }
  }

  /** Lets the zone go when the chosen boat has none of that name. */
  void check() {
    if (zone.isPresent() && zones().stream().noneMatch(found -> found.id().equals(zone.get()))) {
      zone = Optional.empty();
    }
  }

  /** Whether symptoms of other zones and other boats are shown too. */
  public boolean everything() {
    return everything;
  }

  /** Shows symptoms of other zones and other boats too, or not. */
  public void everything(boolean all) {
    everything = all;
    changed.run();
  }

  /** The symptoms to choose from. */
  public List<Noticed> symptoms() {
    return choice().map(choice -> choice.symptoms(zone, everything)).orElse(List.of());
  }

  /** How many symptoms are noticed in each zone. */
  public Map<String, Integer> counts() {
    return choice().map(SymptomChoice::counts).orElse(Map.of());
  }

  /** How many symptoms fit the chosen boat, wherever they are noticed. */
  public int allSymptoms() {
    return choice().map(choice -> choice.symptoms(Optional.empty(), false).size()).orElse(0);
  }

  private Optional<SymptomChoice> choice() {
    return session.fitting().map(fitting -> new SymptomChoice(session.library(), fitting));
  }
}
