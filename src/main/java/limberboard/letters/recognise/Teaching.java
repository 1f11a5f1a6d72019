package limberboard.letters.recognise;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Workspace;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Coefficients.Row;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.TextWords;

/**
 * Makes recognisers of what a workspace's pages, the lists of words and recorded letters teach, and
 * tries them on letters that they did not learn from. Safe for use by several threads.
 */
public final class Teaching {
  /** Recorded letters are learnt from in so many parts, one of which is left out at a time. */
  static final int FOLDS = 10;

  /** Where fewer letters are recorded, too little is known of how owners write. */
  static final int FEW_LETTERS = 100;

  private static final int NO_FOLD = -1;

  private final Workspace workspace;
  private final LocalDate today;
  private final List<RecordedLetter> recorded;
  private final Senders senders;
  private final TextParser parser;
  private final PageTopics pages;
  private final TopicExamples examples;
  private final DangerSentences dangers;
  private final WholeLetters whole;
  private final UrgentRules rules;
  private final SaidAnswers said;
  private final NamingExamples naming;
  private final Map<Integer, Recogniser> byFold = new ConcurrentHashMap<>();

  /**
   * Reads the workspace's letters and words.
   *
   * @param today the day that counts as today
   * @throws IOException when a letter cannot be read
   */
  public Teaching(WorkspaceFolders folders, Workspace workspace, LocalDate today)
      throws IOException {
    this.workspace = workspace;
    this.today = today;
    this.recorded = RecordedLetter.read(folders.letters());
    this.senders = Senders.read(folders.letters());
    List<List<String>> groups = new ArrayList<>(WordList.groups("everyday.txt"));
    groups.addAll(WordList.groups("things.txt"));
    TextWords reader = TextWords.read(folders, groups);
    this.parser = new TextParser(reader, spelling(workspace));
    this.pages = PageTopics.of(reader, workspace.library());
    this.examples = new TopicExamples(parser, pages.symptoms());
    this.dangers = new DangerSentences(parser, new DangerFields(reader));
    this.whole = new WholeLetters(parser, dangers);
    this.rules = new UrgentRules(reader);
    this.said = new SaidAnswers(parser, pages.symptoms());
    this.naming = new NamingExamples(parser, workspace.boats());
  }

  /** What pages, lists and the boats' names spell rightly. */
  private KnownWords spelling(Workspace workspace) {
    Stream<String> pages =
        workspace.library().pages().stream()
            .flatMap(
                page ->
                    Stream.of(
                        page.title(),
                        page.head().summary(),
                        String.join(" ", page.head().saidAs()),
                        page.body(),
                        page.details().toString()));
    Stream<String> lists =
        Stream.of("cues.txt", "everyday.txt", "things.txt", "no-faults.txt")
            .flatMap(name -> WordList.lines(name).stream());
    Stream<String> letters = recorded.stream().map(each -> each.letter().own());
    Stream<String> boats = workspace.boats().stream().map(Boat::name);
    Stream<String> marks = MarkedLine.NAMES.values().stream();
    return new KnownWords(Stream.of(pages, lists, letters, boats, marks).flatMap(each -> each));
  }

  /** A recogniser that has learnt from all recorded letters. */
  public Recogniser recogniser() {
    return withoutFold(NO_FOLD);
  }

  /**
   * A recogniser for one letter: where that is recorded, one that has learnt from the other parts
   * of the recorded letters only, so that it is never asked what it was told.
   */
  public Recogniser recogniser(Letter letter) {
    return recorded.stream()
        .filter(each -> each.letter().equals(letter))
        .findFirst()
        .map(each -> withoutFold(fold(each)))
        .orElseGet(this::recogniser);
  }

  private Chances given() {
    return Chances.given(recorded.size() >= FEW_LETTERS);
  }

  private Recogniser withoutFold(int fold) {
    return byFold.computeIfAbsent(fold, each -> recogniser(without(each), given()));
  }

  private Recogniser recogniser(List<RecordedLetter> letters, Chances chances) {
    CompletableFuture<UrgentReader> urgent =
        CompletableFuture.supplyAsync(
            () -> new UrgentReader(dangers, rules, examples, whole, letters));
    CompletableFuture<NamingReader> boats =
        CompletableFuture.supplyAsync(() -> new NamingReader(naming, letters));
    return new Recogniser(
        workspace,
        today,
        parser,
        new Topics(pages, parser, letters),
        new TopicChances(examples, letters),
        new Recogniser.Readers(
            urgent.join(),
            new AnswerReader(said, new TaughtAnswers(said, examples, letters), chances.answer()),
            boats.join()),
        senders,
        chances);
  }

  /**
   * How well letters are recognised. Letters that are recorded in the workspace are tried by what
   * was learnt from the other parts of the recorded letters; the letters of one conversation lie in
   * one part.
   */
  public LetterQuality quality(List<RecordedLetter> letters) {
    Set<RecordedLetter> known = Set.copyOf(recorded);
    ToIntFunction<RecordedLetter> apart = letter -> known.contains(letter) ? fold(letter) : NO_FOLD;
    Map<Integer, NaiveBayes> yardsticks = new HashMap<>();
    return LetterQuality.of(
        letters,
        letter -> withoutFold(apart.applyAsInt(letter)),
        letter ->
            examples.symptomsOf(
                yardsticks
                    .computeIfAbsent(apart.applyAsInt(letter), this::yardstick)
                    .ranked(examples.of(letter).keys())));
  }

  private NaiveBayes yardstick(int fold) {
    return new NaiveBayes(without(fold).stream().map(examples::of).toList(), examples.topics());
  }

  static int fold(RecordedLetter letter) {
    String thread = TextParser.withoutReply(letter.letter().head().subject());
    return Math.floorMod(thread.strip().hashCode() * 31 + 7, FOLDS);
  }

  PageTopics pages() {
    return pages;
  }

  TextParser parser() {
    return parser;
  }

  private List<RecordedLetter> without(int fold) {
    return recorded.stream().filter(letter -> fold(letter) != fold).toList();
  }

  /**
   * The coefficients that the recorded letters teach, as lines of the program's list of them; each
   * letter's figures are made by what was learnt of the other parts, and then once more by pages
   * and lists alone, for workspaces with few letters.
   */
  public List<String> coefficients() {
    List<String> lines = new ArrayList<>(coefficients("", this::without));
    lines.addAll(coefficients(Chances.UNTAUGHT, fold -> List.of()));
    return lines;
  }

  private List<String> coefficients(String name, IntFunction<List<RecordedLetter>> learnt) {
    List<Tried> tried = tried(learnt);
    Coefficients symptom = Coefficients.learnt(tried.stream().flatMap(Tried::symptoms).toList());
    Coefficients fault = Coefficients.learnt(tried.stream().map(Tried::fault).toList());
    Chances first =
        new Chances(symptom, fault, Coefficients.NONE, Coefficients.NONE, Coefficients.NONE);
    Coefficients covered =
        Coefficients.learnt(tried.stream().map(each -> each.covered(first)).toList());
    Coefficients urgent =
        Coefficients.learnt(tried.stream().map(each -> each.urgent(fault)).toList());
    return List.of(
        symptom.line(name + Chances.SYMPTOM),
        fault.line(name + Chances.FAULT),
        covered.line(name + Chances.COVERED),
        urgent.line(name + Chances.URGENT),
        Coefficients.learnt(answers(learnt)).line(name + Chances.ANSWER));
  }

  /** A recorded letter, with its figures by what was learnt of the other parts. */
  private record Tried(
      Expected expected, Map<String, double[]> ofSymptoms, double[] ofFault, double[] ofUrgent) {
    Stream<Row> symptoms() {
      return ofSymptoms.entrySet().stream()
          .map(each -> new Row(each.getValue(), expected.symptoms().contains(each.getKey())));
    }

    Row fault() {
      return new Row(ofFault, expected.fault());
    }

    Row covered(Chances chances) {
      List<double[]> figures = List.copyOf(ofSymptoms.values());
      return new Row(Covered.figures(chances, figures, ofFault), !expected.symptoms().isEmpty());
    }

    Row urgent(Coefficients fault) {
      return new Row(UrgentReader.with(fault.chance(ofFault), ofUrgent), expected.urgent());
    }
  }

  private List<Tried> tried(IntFunction<List<RecordedLetter>> learnt) {
    List<Tried> all = new ArrayList<>();
    for (int fold = 0; fold < FOLDS; fold++) {
      Recogniser recogniser = recogniser(learnt.apply(fold), Chances.NONE);
      for (RecordedLetter letter : recorded) {
        if (fold(letter) == fold && !letter.letter().head().automatic()) {
          Letter read = letter.letter();
          all.add(
              new Tried(
                  letter.expected(),
                  recogniser.symptomFigures(read),
                  recogniser.faultFigures(read),
                  recogniser.urgentFigures(read)));
        }
      }
    }
    return all;
  }

  private List<Row> answers(IntFunction<List<RecordedLetter>> learnt) {
    List<Row> rows = new ArrayList<>();
    for (int fold = 0; fold < FOLDS; fold++) {
      TaughtAnswers told = new TaughtAnswers(said, examples, learnt.apply(fold));
      AnswerReader reading = new AnswerReader(said, told, Coefficients.NONE);
      for (RecordedLetter letter : recorded) {
        if (fold(letter) == fold) {
          addAnswers(rows, letter, reading);
        }
      }
    }
    return rows;
  }

  private void addAnswers(List<Row> rows, RecordedLetter letter, AnswerReader reading) {
    LetterText text = parser.recorded(letter);
    for (String symptom : letter.expected().symptoms()) {
      Optional<Map<String, String>> given = letter.expected().answers(symptom);
      if (given.isPresent()) {
        for (AnswerReader.Candidate each : reading.candidates(text, symptom)) {
          rows.add(new Row(each.figures(), each.answer().equals(given.get().get(each.check()))));
        }
      }
    }
  }
}
