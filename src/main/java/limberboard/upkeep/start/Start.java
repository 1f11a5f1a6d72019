package limberboard.upkeep.start;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import limberboard.boat.Boat;
import limberboard.boat.HowKnown;
import limberboard.boat.HowKnown.From;
import limberboard.boat.LogEntry;
import limberboard.library.page.Model.Equipment;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.BoatSystem;
import limberboard.library.value.Condition;
import limberboard.library.value.Interval;
import limberboard.upkeep.Due;
import limberboard.upkeep.InRound;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.start.StartAnswer.Known;
import limberboard.words.Sentences;

/**
 * The start of a bought boat's log: what nobody knows, asked by round and by kind of work, and the
 * lines of the log that the answers make. Immutable.
 *
 * @param upkeep what is due on the boat
 */
public record Start(Upkeep upkeep) {

  /** How far a boat's start has come. */
  public enum Standing {
    /** There is nothing to begin: she came new, or all is known. */
    NOTHING,
    /** Her log is empty and much is overdue: she may have been bought. */
    MAYBE_BOUGHT,
    /** She was bought, and nobody has said yet what is known. */
    NOT_BEGUN,
    /** Something was said, and something is still not known. */
    BEGUN
  }

  /** How far it has come. */
  public Standing standing() {
    Boat boat = upkeep.fitting().boat();
    if (!boat.isEntered()) {
      return Standing.NOTHING;
    }
    if (boat.bought().isEmpty()) {
      boolean overdue = !upkeep.of(Due.Group.OVERDUE).isEmpty();
      return boat.log().isEmpty() && overdue ? Standing.MAYBE_BOUGHT : Standing.NOTHING;
    }
    if (open().isEmpty()) {
      return Standing.NOTHING;
    }
    boolean said = boat.log().stream().anyMatch(entry -> entry.known().isPresent());
    return said ? Standing.BEGUN : Standing.NOT_BEGUN;
  }

  /**
   * What to do about it, in a sentence, for whoever reads what is due; empty when there is nothing.
   *
   * @param how how it is done here, with a place for the boat's id: {@code limberboard start …}
   */
  public Optional<String> hint(UnaryOperator<String> how) {
    String id = upkeep.fitting().boat().id();
    return switch (standing()) {
      case MAYBE_BOUGHT ->
          Optional.of(
              "Her log is empty, so all counts from when she was new. Did you buy her from another"
                  + " owner? Say when, and what you know: "
                  + how.apply(id)
                  + ".");
      case NOT_BEGUN ->
          Optional.of(
              "Nobody has said yet what is known of her. That takes a few minutes: "
                  + how.apply(id)
                  + ".");
      case BEGUN, NOTHING -> Optional.empty();
    };
  }

  /** All that nobody knows when it was done, the gravest first. */
  public List<Due> open() {
    return upkeep.all().stream().filter(due -> !due.isKnown()).toList();
  }

  /** The questions, those about the gravest work first; each piece of work is in one of them. */
  public List<StartQuestion> questions() {
    Map<String, List<Due>> groups = new LinkedHashMap<>();
    Map<String, String> titles = new LinkedHashMap<>();
    List<String> rounds = new ArrayList<>();
    for (Due due : open()) {
      Optional<String> round =
          due.work().details().isRound()
              ? Optional.of(due.work().id())
              : due.round().map(InRound::round);
      String id = round.orElseGet(() -> kind(due));
      round.filter(each -> !rounds.contains(each)).ifPresent(rounds::add);
      titles.putIfAbsent(id, round.map(this::title).orElseGet(() -> kindTitle(due)));
      groups.computeIfAbsent(id, key -> new ArrayList<>()).add(due);
    }
    List<StartQuestion> questions = new ArrayList<>();
    groups.forEach(
        (id, works) ->
            questions.add(new StartQuestion(id, titles.get(id), works, rounds.contains(id))));
    questions.sort(
        Comparator.comparing(StartQuestion::consequence)
            .thenComparing(question -> !question.isRound()));
    return List.copyOf(questions);
  }

  private String title(String round) {
    return upkeep.all().stream()
        .filter(due -> due.work().id().equals(round))
        .map(due -> due.work().title())
        .findFirst()
        .orElse(round);
  }

  private static BoatSystem system(Due due) {
    return due.work().head().system().orElse(BoatSystem.HULL);
  }

  private static String kind(Due due) {
    return system(due).word()
        + switch (due.work().details().work()) {
          case INSPECT, SERVICE, MEND -> "-care";
          case RENEW -> "-renewals";
        };
  }

  private static String kindTitle(Due due) {
    return Sentences.capital(system(due).spoken())
        + switch (due.work().details().work()) {
          case INSPECT, SERVICE, MEND -> ": looked after";
          case RENEW -> ": renewed by its age";
        };
  }

  /**
   * The lines of the log that answers make. What is answered by itself counts before what is said
   * of the whole question. A survey tells of looks only. Of a round its own page is written once
   * all that is done with it is.
   *
   * @param answers question or page to what is said of it
   */
  public List<LogEntry> entries(Map<String, StartAnswer> answers) {
    List<LogEntry> entries = new ArrayList<>();
    for (StartQuestion question : questions()) {
      List<LogEntry> own = new ArrayList<>();
      Optional<Due> round = Optional.empty();
      for (Due due : question.works()) {
        if (question.isRound() && due.work().id().equals(question.id())) {
          round = Optional.of(due);
        } else {
          known(question, due, answers).ifPresent(own::add);
        }
      }
      int others = question.works().size() - (round.isPresent() ? 1 : 0);
      if (round.isPresent() && own.size() == others) {
        entries.add(round(round.get(), own));
      }
      entries.addAll(own);
    }
    return List.copyOf(entries);
  }

  /** A round all of whose work is known was done when the first of it was. */
  private static LogEntry round(Due round, List<LogEntry> own) {
    LogEntry oldest = own.stream().min(Comparator.comparing(LogEntry::date)).orElseThrow();
    return LogEntry.known(oldest.date(), round.work().id(), oldest.known().orElseThrow());
  }

  private static Optional<LogEntry> known(
      StartQuestion question, Due due, Map<String, StartAnswer> answers) {
    boolean single = isSingle(question, due, answers);
    return answer(question, due, answers) instanceof Known known && tells(known, due, single)
        ? Optional.of(LogEntry.known(known.day(), due.work().id(), known.how()))
        : Optional.empty();
  }

  /**
   * Of how many parts of a question these answers say something: when it was done, or that there is
   * no such thing aboard.
   */
  public long answered(StartQuestion question, Map<String, StartAnswer> answers) {
    return question.parts().stream()
        .filter(
            due ->
                answer(question, due, answers) == StartAnswer.NOT_ABOARD
                    || known(question, due, answers).isPresent())
        .count();
  }

  private static boolean isSingle(
      StartQuestion question, Due due, Map<String, StartAnswer> answers) {
    String page = due.work().id();
    return answers.containsKey(page) && !page.equals(question.id());
  }

  private static StartAnswer answer(
      StartQuestion question, Due due, Map<String, StartAnswer> answers) {
    return isSingle(question, due, answers)
        ? answers.get(due.work().id())
        : answers.getOrDefault(question.id(), StartAnswer.NOT_KNOWN);
  }

  private static boolean tells(Known known, Due due, boolean single) {
    return single || known.how().from() != From.SURVEY || due.isLook();
  }

  /**
   * What a survey of the boat ashore usually looked at, as the pages say; the surveyor's report
   * says which of these it was.
   *
   * @param day of the survey
   */
  public Map<String, StartAnswer> surveyed(LocalDate day) {
    Map<String, StartAnswer> answers = new LinkedHashMap<>();
    for (Due due : open()) {
      if (due.work().details().interval().filter(Interval::surveyed).isPresent()) {
        answers.put(due.work().id(), new Known(day, new HowKnown(From.SURVEY)));
      }
    }
    return answers;
  }

  /** What of the boat's equipment work is for; nothing where it is for every boat. */
  public List<Equipment> equipment(Page<Procedure> work) {
    List<String> choices = new ArrayList<>();
    gather(work.head().fits(), choices);
    return upkeep.fitting().boat().model().details().equipment().stream()
        .filter(each -> each.choices().stream().anyMatch(one -> choices.contains(one.id())))
        .toList();
  }

  private static void gather(Condition condition, List<String> choices) {
    choices.addAll(condition.fitted());
    choices.addAll(condition.notFitted());
    condition.any().forEach(each -> gather(each, choices));
  }
}
