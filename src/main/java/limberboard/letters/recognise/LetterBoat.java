package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import limberboard.boat.Boat;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Passage;

/**
 * Says which boat a letter is about: by her name, as {@link NamingReader} reads it, by her hull
 * number, by model and year. A name or a hull number that is nobody's says that she is none of
 * ours.
 */
final class LetterBoat {
  private final List<Boat> boats;
  private final TextParser parser;
  private final SaidModels models;
  private final NamingReader naming;
  private final Map<String, List<Boat>> byName = new HashMap<>();

  LetterBoat(List<Boat> boats, TextParser parser, SaidModels models, NamingReader naming) {
    this.boats = boats;
    this.parser = parser;
    this.models = models;
    this.naming = naming;
    for (Boat boat : boats) {
      byName
          .computeIfAbsent(boat.name().toLowerCase(Locale.ROOT), none -> new ArrayList<>())
          .add(boat);
    }
  }

  /**
   * What a letter says of its boat.
   *
   * @param boat the boat; empty when it names none, or not surely
   * @param model the model, also of a boat that is none of ours
   * @param year the year in which she was built, where it is said
   */
  record Said(Optional<Recognised> boat, Optional<Recognised> model, OptionalInt year) {}

  /**
   * Reads a letter.
   *
   * @param usual the boat that its sender wrote of before, if any
   * @param fault how likely it tells of a fault, 0 to 1
   */
  Said read(Letter letter, LetterText text, Optional<Boat> usual, double fault) {
    String signature = letter.of(Passage.Kind.SIGNATURE);
    NamingReader.Named own = naming.in(letter, text, fault);
    boolean silent = own.isEmpty() && !models.namesAnother(text.text());
    NamingReader.Named mentions = silent ? naming.quotedIn(letter, fault) : own;
    HullNumbers hulls = HullNumbers.in(text.text() + "\n" + signature);
    List<SaidModels.Mention> named = models.in(text.text() + "\n" + signature);
    Set<String> sizes = new HashSet<>();
    named.forEach(each -> sizes.add(each.model()));
    Optional<Boat> boat = Optional.empty();
    String why = "";
    List<Boat> ofHull =
        boats.stream().filter(hulls::says).filter(each -> isOneOf(each, sizes)).toList();
    Optional<Boat> byHisName =
        mentions
            .best(name -> isOfAnotherModel(name, sizes))
            .map(byName::get)
            .filter(all -> all.size() == 1)
            .map(all -> all.get(0));
    boolean disclaimed =
        parser.cues(text).stream().anyMatch(cue -> cue.label().equals("disclaims"));
    if (disclaimed && byHisName.isEmpty() && ofHull.size() != 1) {
      return new Said(Optional.empty(), Optional.empty(), OptionalInt.empty());
    }
    boolean other = models.ownAnother(text.text(), byName.keySet());
    if (byHisName.isPresent() && !other && !hulls.contradicts(byHisName.get())) {
      boat = byHisName;
      why = naming.why(text, boat.get().name().toLowerCase(Locale.ROOT), boat.get().name());
    } else if (ofHull.size() == 1) {
      boat = Optional.of(ofHull.get(0));
      why = "hull number " + ofHull.get(0).hull();
    } else if (byHisName.isEmpty()
        && !other
        && hulls.isEmpty()
        && !models.namesAnother(text.text())) {
      Optional<Boat> byYear =
          ofYear(named)
              .filter(each -> !mentions.names().containsKey(each.name().toLowerCase(Locale.ROOT)));
      if (byYear.isPresent()) {
        boat = byYear;
        why = "the only " + boat.get().model().title() + " of " + boat.get().built();
      } else if (usual.isPresent() && isOneOf(usual.get(), sizes) && mentions.isEmpty()) {
        boat = usual;
        why = "the sender's boat";
      }
    }
    Optional<Recognised> model =
        boat.map(found -> new Recognised(found.model().id(), "the model of " + found.name()))
            .or(() -> sizes.size() == 1 ? models.found(named) : Optional.empty());
    String reason = why;
    return new Said(
        boat.map(found -> new Recognised(found.id(), reason)),
        model,
        boat.map(found -> OptionalInt.of(found.built())).orElse(models.year(named)));
  }

  /** Whether a letter that tells of boats of these models names one of none of them. */
  private boolean isOfAnotherModel(String name, Set<String> sizes) {
    return byName.get(name).stream().noneMatch(boat -> isOneOf(boat, sizes));
  }

  /** Whether a boat is of one of the models that a letter tells of, if it tells of any. */
  private static boolean isOneOf(Boat boat, Set<String> sizes) {
    return sizes.isEmpty() || sizes.contains(boat.model().id());
  }

  private Optional<Boat> ofYear(List<SaidModels.Mention> named) {
    List<Boat> of =
        boats.stream()
            .filter(
                boat ->
                    named.stream()
                        .anyMatch(
                            said ->
                                said.model().equals(boat.model().id())
                                    && said.year().isPresent()
                                    && said.year().getAsInt() == boat.built()))
            .toList();
    return of.size() == 1 ? Optional.of(of.get(0)) : Optional.empty();
  }
}
