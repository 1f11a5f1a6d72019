package limberboard.letters.reply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Recogniser;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Teaching;

/**
 * One conversation, followed letter by letter: which boat and which faults it is about, and what
 * was told of each. A letter that surely tells of another boat, or of other symptoms alone, begins
 * anew. For one thread, and used once.
 */
final class ConversationSoFar {
  private static final double SURE = 0.5;

  private final Teaching teaching;
  private final Answerable answerable;
  private final List<KeptLetter> joined = new ArrayList<>();
  private final Map<String, ToldFault> faults = new LinkedHashMap<>();
  private Optional<Fitting> boat = Optional.empty();
  private String sent = "";

  ConversationSoFar(Teaching teaching, Answerable answerable) {
    this.teaching = teaching;
    this.answerable = answerable;
  }

  /** Follows a letter that was written before. */
  void earlier(KeptLetter kept) {
    Letter letter = kept.letter();
    if (kept.isOurs()) {
      sent = letter.own();
    } else if (!letter.head().automatic()) {
      follow(letter, teaching.recogniser(letter), kept.name());
      joined.add(kept);
    }
  }

  /** What there is to answer to the letter that comes now. */
  Reply reply(Letter letter) {
    Recogniser recogniser = teaching.recogniser(letter);
    if (letter.head().automatic()) {
      return answerable.automatic(recogniser.recognise(letter));
    }
    Heard heard = follow(letter, recogniser, "");
    List<ToldFault> about =
        heard.symptoms().stream().filter(faults::containsKey).map(faults::get).toList();
    return answerable.reply(letter, heard.seen(), joined, boat, about);
  }

  /**
   * What was heard in a letter.
   *
   * @param seen what was recognised in it by itself
   * @param symptoms the faults that it is about
   */
  private record Heard(Recognition seen, Set<String> symptoms) {}

  private Heard follow(Letter letter, Recogniser recogniser, String name) {
    Recognition seen = recogniser.recognise(letter);
    ofBoat(recogniser.fitting(seen));
    Set<String> about = new LinkedHashSet<>(ofItsOwn(seen));
    Hearing hearing = new Hearing(answerable, List.copyOf(faults.values()), sent);
    Map<String, Map<String, Optional<String>>> numbered = hearing.numbered(letter, boat);
    Map<String, List<GivenAnswer>> given = new LinkedHashMap<>(seen.answers());
    if (!faults.isEmpty() && numbered.isEmpty() && about.stream().noneMatch(faults::containsKey)) {
      if (about.stream().anyMatch(symptom -> chance(seen, symptom) >= SURE)) {
        begin();
      } else {
        Map<String, List<GivenAnswer>> within = hearing.within(letter, recogniser, seen);
        if (!within.isEmpty()) {
          given = within;
          about.clear();
          about.addAll(within.keySet());
        } else if (!about.isEmpty()) {
          begin();
        }
      }
    }
    seen.symptoms().stream()
        .filter(suspect -> about.contains(suspect.id()))
        .forEach(
            suspect ->
                faults.merge(
                    suspect.id(),
                    new ToldFault(suspect, List.of()),
                    (was, now) -> was.seen(suspect)));
    given.forEach(
        (symptom, answers) ->
            answers.forEach(each -> hear(symptom, each.check(), Optional.of(each.answer()), name)));
    numbered.forEach(
        (symptom, answers) -> {
          about.add(symptom);
          answers.forEach((check, answer) -> hear(symptom, check, answer, name));
        });
    return new Heard(seen, about);
  }

  /** The symptoms that a letter tells of by itself, as far as its answers were read. */
  private static Set<String> ofItsOwn(Recognition seen) {
    return seen.symptoms().stream()
        .map(Suspect::id)
        .filter(seen.answers()::containsKey)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static double chance(Recognition seen, String symptom) {
    return seen.symptoms().stream()
        .filter(suspect -> suspect.id().equals(symptom))
        .mapToDouble(Suspect::chance)
        .findFirst()
        .orElse(0);
  }

  private void hear(String symptom, String check, Optional<String> answer, String letter) {
    faults.computeIfPresent(symptom, (id, fault) -> fault.with(check, answer, letter));
  }

  /** A boat that is named goes before one of which the model alone is known. */
  private void ofBoat(Optional<Fitting> named) {
    if (named.isPresent() && boat.isPresent()) {
      boolean sameModel = named.get().boat().model().id().equals(boat.get().boat().model().id());
      boolean bothNamed = named.get().boat().isEntered() && boat.get().boat().isEntered();
      if (!sameModel || bothNamed && !named.get().boat().id().equals(boat.get().boat().id())) {
        begin();
        boat = Optional.empty();
      }
    }
    if (boat.isEmpty() || named.isPresent() && named.get().boat().isEntered()) {
      boat = named;
    }
  }

  private void begin() {
    faults.clear();
    joined.clear();
    sent = "";
  }
}
