package limberboard.letters.recognise;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.NotEntered;
import limberboard.boat.Workspace;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Urgent;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.page.Wording;
import limberboard.library.value.Condition;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/** Recognises what letters are about. Immutable, safe for use by several threads. */
public final class Recogniser {
  private static final double LEAST = 0.5;
  private static final double LEAST_COVERED = 0.3;
  private static final double LEAST_SHOWN = 0.02;
  private static final int MOST_SHOWN = 5;
  private static final int MOST_WORDS = 8;

  private final Workspace workspace;
  private final LocalDate today;
  private final TextParser parser;
  private final Topics topics;
  private final LetterBoat boats;
  private final UrgentReader urgent;
  private final Senders senders;
  private final AnswerReader answers;
  private final TopicChances topicChances;
  private final Chances chances;
  private final Map<String, String> alwaysUrgent;

  /** What reads danger, told answers and the boat. */
  record Readers(UrgentReader urgent, AnswerReader answers, NamingReader naming) {}

  Recogniser(
      Workspace workspace,
      LocalDate today,
      TextParser parser,
      Topics topics,
      TopicChances topicChances,
      Readers readers,
      Senders senders,
      Chances chances) {
    this.workspace = workspace;
    this.today = today;
    this.parser = parser;
    this.topics = topics;
    this.urgent = readers.urgent();
    this.answers = readers.answers();
    this.senders = senders;
    this.topicChances = topicChances;
    this.chances = chances;
    alwaysUrgent = alwaysUrgent(workspace.library());
    boats =
        new LetterBoat(
            workspace.boats(), parser, new SaidModels(workspace.library()), readers.naming());
  }

  /** Recognises a letter. */
  public Recognition recognise(Letter letter) {
    LetterText text = parser.read(letter);
    TopicScores scores = new TopicScores(topics, text);
    LetterFigures figures = new LetterFigures(topics, topicChances, scores, text);
    boolean silent = letter.head().automatic() || text.words().isEmpty();
    double[] ofFault = figures.ofFault();
    double fault = silent ? 0 : chances.fault().chance(ofFault);
    LetterBoat.Said said = boat(letter, text, fault);
    List<double[]> ofSymptoms = ofSymptoms(said, figures);
    List<Suspect> suspects = suspects(text, scores, ofSymptoms);
    Optional<Urgent> told = letter.head().automatic() ? Optional.empty() : urgent(text, fault);
    boolean isFault = fault >= LEAST || told.isPresent();
    boolean none =
        silent
            || suspects.isEmpty()
            || chances.covered().chance(Covered.figures(chances, ofSymptoms, ofFault))
                < LEAST_COVERED;
    Optional<Urgent> alarm = none ? told : told.or(() -> always(suspects.get(0), text));
    return new Recognition(
        text.text(),
        said.boat(),
        said.model(),
        said.year(),
        alarm,
        isFault || !none,
        fault,
        none ? List.of() : suspects,
        none ? Map.of() : answers(text, suspects));
  }

  private LetterBoat.Said boat(Letter letter, LetterText text, double fault) {
    return boats.read(letter, text, senders.boat(letter, workspace.boats()), fault);
  }

  private Optional<Urgent> urgent(LetterText text, double fault) {
    return urgent
        .urgent(text, chances.urgent(), fault)
        .map(told -> new Urgent(told.what(), words(text, told.from(), told.to())));
  }

  /**
   * What is dangerous about a symptom that is always urgent, however calmly it is told; empty where
   * it is denied, over, asked about or supposed.
   */
  private Optional<Urgent> always(Suspect suspect, LetterText text) {
    Set<Integer> starts =
        suspect.words().stream().map(Words::start).collect(Collectors.toUnmodifiableSet());
    long so =
        text.words().stream()
            .filter(word -> starts.contains(word.word().start()))
            .filter(word -> word.isSo() && !word.asked())
            .count();
    return Optional.ofNullable(alwaysUrgent.get(suspect.id()))
        .filter(what -> 2 * so > starts.size())
        .map(
            what ->
                new Urgent(
                    what, suspect.words().stream().findFirst().orElseGet(() -> words(text, 0, 1))));
  }

  private static Map<String, String> alwaysUrgent(Library library) {
    Map<String, String> all = new HashMap<>();
    library.all(Wording.class).stream()
        .map(Page::details)
        .filter(wording -> !wording.when().isEmpty())
        .forEach(
            wording ->
                wording.symptoms().forEach(id -> all.putIfAbsent(id, wording.when().get(0))));
    return all;
  }

  private List<double[]> ofSymptoms(LetterBoat.Said said, LetterFigures figures) {
    Optional<Fitting> fitting = fitting(said);
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < topics.symptoms().size(); i++) {
      all.add(figures.of(i, excluded(topics.symptoms().get(i), fitting, said)));
    }
    return all;
  }

  private List<Suspect> suspects(LetterText text, TopicScores scores, List<double[]> ofSymptoms) {
    List<Suspect> suspects = new ArrayList<>();
    for (int i = 0; i < topics.symptoms().size(); i++) {
      Page<Symptom> symptom = topics.symptoms().get(i);
      if (scores.whole(i) > 0) {
        double chance = chances.symptom().chance(ofSymptoms.get(i));
        if (chance >= LEAST_SHOWN) {
          suspects.add(
              new Suspect(
                  symptom.id(),
                  chance,
                  scores.words(i, MOST_WORDS).stream()
                      .map(each -> words(text, each.at(), each.at() + 1))
                      .toList()));
        }
      }
    }
    return suspects.stream()
        .sorted(Comparator.comparingDouble(Suspect::chance).reversed())
        .limit(MOST_SHOWN)
        .toList();
  }

  /** The answers to the checks of the first symptom, and of others that are as good as sure. */
  private Map<String, List<GivenAnswer>> answers(LetterText text, List<Suspect> suspects) {
    Map<String, List<GivenAnswer>> given = new LinkedHashMap<>();
    for (int i = 0; i < suspects.size(); i++) {
      if (i == 0 || suspects.get(i).chance() >= LEAST) {
        given.put(suspects.get(i).id(), answers.read(text, suspects.get(i).id()));
      }
    }
    return given;
  }

  private boolean excluded(Page<Symptom> symptom, Optional<Fitting> fitting, LetterBoat.Said said) {
    Condition fits = symptom.head().fits();
    if (fitting.isPresent()) {
      return !fitting.get().fits(fits);
    }
    return said.model().isPresent()
        && !fits.model().isEmpty()
        && !fits.model().contains(said.model().get().id());
  }

  /**
   * The boat that a letter is about, or one of the model that it names as the yard usually fitted
   * it; empty where it names neither.
   */
  public Optional<Fitting> fitting(Recognition recognition) {
    return fitting(
        new LetterBoat.Said(recognition.boat(), recognition.model(), recognition.year()));
  }

  private Optional<Fitting> fitting(LetterBoat.Said said) {
    if (said.boat().isPresent()) {
      return workspace.boat(said.boat().get().id()).map(boat -> new Fitting(boat, today));
    }
    return said.model()
        .flatMap(model -> workspace.library().model(model.id()))
        .map(
            model -> {
              int year = said.year().orElse(model.details().built().to().orElse(today.getYear()));
              Boat boat = NotEntered.boat(model, year, new HashMap<>(), Water.SALT, Use.PRIVATE);
              return new Fitting(boat, today);
            });
  }

  private static Words words(LetterText text, int from, int to) {
    return new Words(
        text.written(from, to),
        text.words().get(from).word().start(),
        text.words().get(to - 1).word().end());
  }

  /** The figures of a letter for each symptom, by its id, to learn from. */
  Map<String, double[]> symptomFigures(Letter letter) {
    LetterText text = parser.read(letter);
    LetterFigures read = figures(text);
    LetterBoat.Said said = boat(letter, text, chances.fault().chance(read.ofFault()));
    List<double[]> figures = ofSymptoms(said, read);
    Map<String, double[]> all = new LinkedHashMap<>();
    for (int i = 0; i < topics.symptoms().size(); i++) {
      all.put(topics.symptoms().get(i).id(), figures.get(i));
    }
    return all;
  }

  private LetterFigures figures(LetterText text) {
    return new LetterFigures(topics, topicChances, new TopicScores(topics, text), text);
  }

  /** What the words of a letter say of whether it is urgent, to learn from. */
  double[] urgentFigures(Letter letter) {
    LetterText text = parser.read(letter);
    return UrgentReader.figures(urgent.read(text), text);
  }

  /** The figures of a letter for whether it tells of a fault. */
  double[] faultFigures(Letter letter) {
    LetterText text = parser.read(letter);
    return figures(text).ofFault();
  }
}
