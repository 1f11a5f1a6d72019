package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Session;
import limberboard.library.Library;
import limberboard.library.page.Model.Zone;

/**
 * Where on the boat something is noticed, and the symptoms to choose from there. Which symptoms fit
 * is found in the background, once a library and boat. For the event thread only.
 */
public final class Whereabouts {
  private final Session session;
  private final Latest latest;
  private final Guard guard;
  private final Runnable changed;
  private Optional<String> zone = Optional.empty();
  private boolean everything;
  private Optional<Asked> asked = Optional.empty();
  private Optional<Asked> known = Optional.empty();
  private SymptomChoice choice = SymptomChoice.NONE;
  private List<OfferedSymptom> symptoms = List.of();

  /** Library and boat that symptoms are looked through for. */
  private record Asked(Library library, Fitting fitting) {
    boolean isOfSameBoat(Asked other) {
      return fitting.boat().id().equals(other.fitting.boat().id());
    }
  }

  /**
   * No zone chosen.
   *
   * @param session tells library and boat
   * @param background looks through the symptoms
   * @param guard is told of it
   * @param changed called after each change
   */
  Whereabouts(Session session, Background background, Guard guard, Runnable changed) {
    this.session = session;
    this.latest = new Latest(background);
    this.guard = guard;
    this.changed = changed;
  }

  /** The zones of the chosen boat's model. */
  public List<Zone> zones() {
    return session.boat().map(boat -> boat.model().details().drawnZones()).orElse(List.of());
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
      show();
      changed.run();
    }
  }

  /** Looks at what has changed; a zone that the chosen boat has not is let go. */
  void check() {
    if (zone.isPresent() && zones().stream().noneMatch(found -> found.id().equals(zone.get()))) {
      zone = Optional.empty();
    }
    Optional<Asked> now = session.fitting().map(boat -> new Asked(session.library(), boat));
    if (now.equals(asked)) {
      return;
    }
    asked = now;
    latest.drop();
    if (now.isEmpty() || known.filter(now.get()::isOfSameBoat).isEmpty()) {
      take(Optional.empty(), SymptomChoice.NONE);
    }
    now.ifPresent(this::lookThrough);
  }

  private void lookThrough(Asked now) {
    latest.run(
        "Looking which symptoms fit",
        () -> {
          guard.begins("counting symptoms");
          return SymptomChoice.of(now.library(), now.fitting());
        },
        found -> {
          take(Optional.of(now), found);
          changed.run();
        });
  }

  private void take(Optional<Asked> of, SymptomChoice found) {
    known = of;
    choice = found;
    show();
  }

  private void show() {
    symptoms = choice.symptoms(zone, everything);
  }

  /** Whether the symptoms of the chosen boat have been looked through. */
  public boolean isReady() {
    return known.isPresent();
  }

  /** Whether symptoms of other zones and other boats are shown too. */
  public boolean everything() {
    return everything;
  }

  /** Shows symptoms of other zones and other boats too, or not. */
  public void everything(boolean all) {
    everything = all;
    show();
    changed.run();
  }

  /** The symptoms to choose from. */
  public List<OfferedSymptom> symptoms() {
    return symptoms;
  }

  /** How many symptoms are noticed in a zone. */
  public int count(String id) {
    return choice.counts().getOrDefault(id, 0);
  }

  /** How many symptoms fit the chosen boat, wherever they are noticed. */
  public int allSymptoms() {
    return choice.fitting();
  }
}
