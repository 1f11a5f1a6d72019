package limberboard.desktop.letters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.NotEntered;
import limberboard.letters.inbox.LetterSaid;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/**
 * A boat that a letter may be about.
 *
 * @param id the boat's id; {@link LetterSaid#NONE} for none that is known
 * @param words what a person reads
 */
record BoatChoice(String id, String words) {
  private static final BoatChoice NONE = new BoatChoice(LetterSaid.NONE, "Not known");

  /** What is said of the letter by choosing it. */
  Optional<String> said() {
    return Optional.of(id);
  }

  private static BoatChoice of(Boat boat) {
    return boat.isEntered()
        ? new BoatChoice(boat.id(), boat.name() + ", " + boat.model().title() + ", " + boat.built())
        : new BoatChoice(boat.id(), boat.name() + ", not entered");
  }

  /** The boat that a letter is taken to be about. */
  static BoatChoice of(Understanding letter) {
    return letter.fitting().map(fitting -> of(fitting.boat())).orElse(NONE);
  }

  /** None, all boats, and of each model one that nobody has entered. */
  static List<BoatChoice> all(Understanding letter) {
    List<BoatChoice> all = new ArrayList<>(List.of(NONE));
    letter.workspace().boats().forEach(boat -> all.add(of(boat)));
    for (Page<Model> model : letter.workspace().library().all(Model.class)) {
      int year = model.details().built().to().orElse(letter.today().getYear());
      all.add(of(NotEntered.boat(model, year, java.util.Map.of(), Water.SALT, Use.PRIVATE)));
    }
    BoatChoice now = of(letter);
    if (!all.contains(now)) {
      all.add(now);
    }
    return all;
  }
}
