package limberboard.desktop.upkeep.start;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.HowKnown.From;
import limberboard.boat.LogEntry;
import limberboard.boat.Typed;
import limberboard.desktop.base.Observed;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.page.Model.Equipment;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.AnswerText;
import limberboard.upkeep.start.Start;
import limberboard.upkeep.start.Start.Standing;
import limberboard.upkeep.start.StartAnswer.Known;
import limberboard.upkeep.start.StartQuestion;
import limberboard.words.CountWords;
import limberboard.words.Sentences;

/**
 * What is known of a bought boat, asked by round and by kind of work, and not written yet, without
 * Swing. Each boat keeps her own answers. For the event thread only.
 */
public final class StartModel extends Observed {
  private final UpkeepModel upkeep;
  private final LogModel log;
  private final Map<String, StartDraft> drafts = new HashMap<>();
  private Optional<Upkeep> asked = Optional.empty();
  private List<StartQuestion> questions = List.of();
  private Runnable afterWriting = () -> {};
  private String surveyWrong = "";

  /**
   * A model on the chosen boat.
   *
   * @param upkeep tells the boat and what is due
   * @param log writes her log
   */
  public StartModel(UpkeepModel upkeep, LogModel log) {
    this.upkeep = upkeep;
    this.log = log;
    upkeep.onChange(this::follow);
    log.onChange(this::tell);
    follow();
  }

  private void follow() {
    Optional<Upkeep> now = upkeep.upkeep();
    if (!now.equals(asked)) {
      asked = now;
      questions = start().map(Start::questions).orElse(List.of());
      surveyWrong = "";
    }
    tell();
  }

  private Optional<Start> start() {
    return asked.map(Start::new);
  }

  /** Says what happens once the answers have been written. */
  public void afterWriting(Runnable action) {
    afterWriting = action;
  }

  /** The chosen boat. */
  Optional<Boat> boat() {
    return upkeep.boat();
  }

  /** How far the boat's start has come; nothing until that has been worked out. */
  public Standing standing() {
    return start().map(Start::standing).orElse(Standing.NOTHING);
  }

  /** The questions, those about the gravest work first. */
  List<StartQuestion> questions() {
    return questions;
  }

  private StartDraft draft() {
    return drafts.computeIfAbsent(boat().map(Boat::id).orElse(""), id -> new StartDraft());
  }

  private Optional<AnswerText> reader() {
    return boat().map(boat -> new AnswerText(boat, upkeep.today()));
  }

  /** What is chosen beside a question. */
  Told told(StartQuestion question) {
    boolean each =
        question.parts().size() > 1
            && question.parts().stream().anyMatch(due -> draft().says(due.work().id()));
    return draft().told(key(question), each ? Told.EACH : Told.NOT_KNOWN);
  }

  /**
   * Under what a question is answered: its own id, or that of its only piece of work once that is
   * answered by itself.
   */
  String key(StartQuestion question) {
    String only = question.parts().get(0).work().id();
    return question.parts().size() == 1 && draft().has(only) ? only : question.id();
  }

  /** What is chosen beside one piece of work of a question. */
  Told told(Due due) {
    return draft().told(due.work().id(), Told.AS_ABOVE);
  }

  /** What is typed as the day of a question or a page. */
  String when(String id) {
    return draft().when(id);
  }

  /** What is wrong with an answer, in a sentence; empty when nothing is. */
  String problem(String id) {
    return reader().map(reader -> draft().problem(id, reader)).orElse("");
  }

  void tell(String id, Told choice) {
    draft().tell(id, choice);
    if (choice == Told.EACH && !draft().isUnfolded(id)) {
      draft().turn(id);
    }
    tell();
  }

  void when(String id, String text) {
    if (!text.equals(when(id))) {
      draft().when(id, text);
      tell();
    }
  }

  boolean isUnfolded(StartQuestion question) {
    return draft().isUnfolded(question.id());
  }

  /** Shows each piece of work of a question, or no more. */
  void turn(StartQuestion question) {
    draft().turn(question.id());
    tell();
  }

  /**
   * Answers all that a survey on a day usually looked at ashore and that nothing else is said of.
   */
  void survey(String day) {
    Optional<Typed<Known>> read = reader().map(reader -> reader.known(From.SURVEY, day));
    surveyWrong = read.flatMap(Typed::bad).map(bad -> bad.wrong() + "; " + bad.right()).orElse("");
    Optional<Start> start = start();
    if (surveyWrong.isEmpty() && start.isPresent()) {
      for (String page : start.get().surveyed(upkeep.today()).keySet()) {
        boolean asWhole =
            questions.stream()
                .filter(each -> each.works().stream().anyMatch(due -> due.work().id().equals(page)))
                .anyMatch(each -> draft().says(each.id()));
        if (draft().told(page, Told.AS_ABOVE) == Told.AS_ABOVE && !asWhole) {
          draft().tell(page, Told.SURVEY);
          draft().when(page, day.strip());
        }
      }
    }
    tell();
  }

  /** What is wrong with the survey's day; empty when nothing is. */
  String surveyWrong() {
    return surveyWrong;
  }

  /** What a question asks about and what is answered: {@code 3 of 5 pieces of work}. */
  String facts(StartQuestion question) {
    long answered =
        start()
            .flatMap(start -> reader().map(read -> start.answered(question, draft().answers(read))))
            .orElse(0L);
    int all = question.parts().size();
    String count =
        answered == 0
            ? CountWords.of(all, "piece of work", "pieces of work")
            : answered + " of " + all + " answered";
    return Sentences.capital(question.consequence().said()) + " · " + count;
  }

  /** What the boat's own choices have to do with work that is said not to be aboard. */
  String notAboard(StartQuestion question) {
    List<String> choices =
        start().stream()
            .flatMap(start -> question.works().stream().flatMap(due -> names(start, due).stream()))
            .distinct()
            .toList();
    return choices.isEmpty()
        ? "This is for every boat of her kind; leave it as not known where she really has none."
        : "Then put right what is fitted, under Boats: " + String.join(", ", choices) + ".";
  }

  private static List<String> names(Start start, Due due) {
    return start.equipment(due.work()).stream().map(Equipment::title).toList();
  }

  /** The lines that would be written now. */
  List<LogEntry> lines() {
    return start()
        .flatMap(start -> reader().map(reader -> start.entries(draft().answers(reader))))
        .orElse(List.of());
  }

  /** Whether it can be written: something is known and nothing that was typed is wrong. */
  boolean canWrite() {
    return !log.isBusy() && wrong() == 0 && !lines().isEmpty();
  }

  /** How many answers cannot be read. */
  long wrong() {
    return ids().filter(id -> !problem(id).isEmpty()).count();
  }

  private Stream<String> ids() {
    return questions.stream()
        .flatMap(
            question ->
                Stream.concat(
                    Stream.of(question.id()),
                    question.works().stream().map(due -> due.work().id())))
        .distinct();
  }

  /** Writes all that is known into the boat's log, in one step. */
  void write() {
    if (canWrite()) {
      String boat = boat().map(Boat::id).orElseThrow();
      log.add(
          lines(),
          () -> {
            drafts.remove(boat);
            afterWriting.run();
          });
    }
    tell();
  }

  /** Forgets what was answered and not written. */
  void clear() {
    drafts.remove(boat().map(Boat::id).orElse(""));
    surveyWrong = "";
    tell();
  }

  /** Whether anything is answered that is not written. */
  boolean isTouched() {
    return draft().isTouched();
  }

  /** Boats whose answers would be lost, by id. */
  public Set<String> halfTyped() {
    return drafts.entrySet().stream()
        .filter(draft -> draft.getValue().isTouched())
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
