package limberboard.letters.recognise;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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

  private final Workspace workspace;
  private final LocalDate today;
  private final List<RecordedLetter> recorded;
  private final Senders senders;
  private final TextParser parser;
  private final PageTopics pages;
  private final TopicExamples examples;
  private final DangerSentences dangers;
  private final UrgentRules rules;
  private final SaidAnswers said;
  private final Recogniser all;
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
    this.rules = new UrgentRules(reader);
    this.said = new SaidAnswers(parser, pages.symptoms());
    this.all = recogniser(recorded, Chances.given());
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
    return new KnownWords(Stream.of(pages, lists, letters, boats).flatMap(each -> each));
  }

  /** A recogniser that has learnt from all recorded letters. */
  public Recogniser recogniser() {
    return all;
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

  private Recogniser withoutFold(int fold) {
    return byFold.computeIfAbsent(fold, each -> recogniser(without(each), Chances.given()));
  }

  private Recogniser recogniser(List<RecordedLetter> letters, Chances chances) {
    return new Recogniser(
        workspace,
        today,
        parser,
        new Topics(pages, parser, letters),
        new TopicChances(examples, letters),
        new UrgentReader(dangers, rules, letters),
        new AnswerReader(said, chances.answer()),
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
    return LetterQuality.of(
        letters, letter -> known.contains(letter) ? withoutFold(fold(letter)) : all);
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
   * letter's figures are made by what was learnt of the other parts.
   */
  public List<String> coefficients() {
    List<Row> symptoms = new ArrayList<>();
    List<Row> faults = new ArrayList<>();
    List<Row> urgent = new ArrayList<>();
    for (int fold = 0; fold < FOLDS; fold++) {
      Recogniser recogniser = recogniser(without(fold), Chances.NONE);
      for (RecordedLetter letter : recorded) {
        if (fold(letter) == fold && !letter.letter().head().automatic()) {
          recogniser
              .symptomFigures(letter.letter())
              .forEach(
                  (symptom, figures) ->
                      symptoms.add(
                          new Row(figures, letter.expected().symptoms().contains(symptom))));
          faults.add(new Row(recogniser.faultFigures(letter.letter()), letter.expected().fault()));
          urgent.add(
              new Row(recogniser.urgentFigures(letter.letter()), letter.expected().urgent()));
        }
      }
    }
    return List.of(
        Coefficients.learnt(symptoms).line(Chances.SYMPTOM),
        Coefficients.learnt(faults).line(Chances.FAULT),
        Coefficients.learnt(urgent).line(Chances.URGENT),
        Coefficients.learnt(answers()).line(Chances.ANSWER));
  }

  private List<Row> answers() {
    List<Row> rows = new ArrayList<>();
    AnswerReader reading = new AnswerReader(said, Coefficients.NONE);
    for (RecordedLetter letter : recorded) {
      LetterText text = parser.recorded(letter);
      for (String symptom : letter.expected().symptoms()) {
        Map<String, String> given = letter.expected().answers().getOrDefault(symptom, Map.of());
        for (AnswerReader.Candidate each : reading.candidates(text, symptom)) {
          rows.add(new Row(each.figures(), each.answer().equals(given.get(each.check()))));
        }
      }
    }
    return rows;
  }
}
