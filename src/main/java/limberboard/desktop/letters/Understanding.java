package limberboard.desktop.letters;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.letters.AnswerAs.Kind;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.inbox.LetterSaid;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TrailStep;

/**
 * A letter as it is understood: what was recognised, and what a person said otherwise. Immutable.
 *
 * @param workspace pages, boats and cases
 * @param today the day of the answer
 * @param letter the letter
 * @param seen what was recognised in it
 * @param seenBoat the boat that was recognised, or one of the model that was
 * @param said what a person said otherwise
 */
record Understanding(
    Workspace workspace,
    LocalDate today,
    Letter letter,
    Recognition seen,
    Optional<Fitting> seenBoat,
    LetterSaid said) {
  private static final double AS_GOOD_AS_SURE = 0.5;
  private static final int MOST_TO_ASK = 3;

  /** The same with something else said. */
  Understanding saying(LetterSaid other) {
    return new Understanding(workspace, today, letter, seen, seenBoat, other);
  }

  /** The boat that it is about, or one of her model that nobody has entered. */
  Optional<Fitting> fitting() {
    return said.boat().isEmpty() ? seenBoat : boat().map(boat -> new Fitting(boat, today));
  }

  private Optional<Boat> boat() {
    return said.boat().flatMap(workspace::boat);
  }

  /** Why it is thought to be this boat, as a sentence. */
  String boatWhy() {
    if (said.boat().isPresent()) {
      return "As you said.";
    }
    return seen.boat()
        .map(known -> "By " + known.why() + ".")
        .or(() -> seen.model().map(known -> "Only the model is known (" + known.why() + ")."))
        .orElse("The letter names no boat that is known here.");
  }

  /** What is dangerous now, in words that go on after "you write that". */
  List<String> urgent() {
    return said.urgent()
        .orElseGet(() -> seen.urgent().map(Recognition.Urgent::what).stream().toList());
  }

  /** The symptoms that were recognised, the likeliest first, then those that a person added. */
  List<String> symptoms() {
    List<String> all = new ArrayList<>(seen.symptoms().stream().map(Suspect::id).toList());
    said.symptoms().orElse(List.of()).stream().filter(id -> !all.contains(id)).forEach(all::add);
    return all.stream().filter(id -> page(id).isPresent()).toList();
  }

  Optional<Page<Symptom>> page(String symptom) {
    return workspace.library().symptom(symptom);
  }

  /** What was recognised of a symptom; empty of one that a person added. */
  Optional<Suspect> suspect(String symptom) {
    return seen.symptoms().stream().filter(each -> each.id().equals(symptom)).findFirst();
  }

  /** The symptoms that the letter is taken to tell of. */
  List<String> chosen() {
    if (said.symptoms().isPresent()) {
      return symptoms().stream().filter(said.symptoms().get()::contains).toList();
    }
    List<Suspect> sure =
        seen.symptoms().stream().filter(each -> each.chance() >= AS_GOOD_AS_SURE).toList();
    List<Suspect> taken = sure.isEmpty() && seen.symptoms().size() == 1 ? seen.symptoms() : sure;
    return taken.stream().map(Suspect::id).filter(id -> page(id).isPresent()).toList();
  }

  /** What kind of answer it gets. */
  AnswerAs about() {
    return said.about().flatMap(AnswerAs::read).orElseGet(this::usual);
  }

  private AnswerAs usual() {
    if (!chosen().isEmpty()) {
      return AnswerAs.of(Kind.FAULTS);
    } else if (letter.head().automatic()) {
      return AnswerAs.of(Kind.NOTHING);
    } else if (!seen.fault() && said.symptoms().isEmpty()) {
      return AnswerAs.of(Kind.NO_FAULT);
    }
    boolean several = said.symptoms().isEmpty() && toAsk().size() > 1;
    return AnswerAs.of(several ? Kind.WHICH_SYMPTOM : Kind.NOT_COVERED);
  }

  /** The answers to a symptom's checks, check to answer; those taken back are left out. */
  Map<String, String> answers(String symptom) {
    Map<String, String> all = new LinkedHashMap<>(read(symptom));
    all.putAll(said.answers().getOrDefault(symptom, Map.of()));
    all.values().removeIf(LetterSaid.TAKEN_BACK::equals);
    return all;
  }

  /** The answers that were read in the letter. */
  private Map<String, String> read(String symptom) {
    Map<String, String> all = new LinkedHashMap<>();
    seen.answers()
        .getOrDefault(symptom, List.of())
        .forEach(given -> all.put(given.check(), given.answer()));
    return all;
  }

  /** The words in which an answer was read; empty where a person gave it or gave another. */
  Optional<String> words(String symptom, String check) {
    return said.answers().getOrDefault(symptom, Map.of()).containsKey(check)
        ? Optional.empty()
        : seen.answers().getOrDefault(symptom, List.of()).stream()
            .filter(given -> given.check().equals(check))
            .map(GivenAnswer::words)
            .map(Recognition.Words::written)
            .findFirst();
  }

  /** The answers as the trace place takes them. */
  List<TrailStep> steps(String symptom) {
    List<TrailStep> steps = new ArrayList<>();
    answers(symptom)
        .forEach(
            (check, answer) ->
                steps.add(
                    answer.equals(LetterSaid.CANNOT_TELL)
                        ? new TrailStep.CouldNotTell(check)
                        : new TrailStep.Answered(check, answer)));
    return steps;
  }

  /** Whether the boat can have a symptom; any boat where none is known. */
  boolean fits(String symptom) {
    Optional<Page<Symptom>> page = page(symptom);
    return page.isPresent()
        && fitting().map(boat -> boat.fits(page.get().head().fits())).orElse(true);
  }

  /** What is to be answered. Takes as long as weighing causes does; not for the event thread. */
  ToAnswer toAnswer() {
    String owner = letter.head().from().map(Mailbox::name).orElse("");
    return new ToAnswer(owner, fitting(), urgent(), what());
  }

  private ToAnswer.About what() {
    AnswerAs about = about();
    return switch (about.kind()) {
      case FAULTS -> faults();
      case WHICH_SYMPTOM -> unsure();
      case NOT_COVERED -> new ToAnswer.NotCovered();
      case NO_FAULT -> new ToAnswer.NoFault(about.matter());
      case NOTHING -> new ToAnswer.NoAnswer();
    };
  }

  private ToAnswer.About faults() {
    Optional<Fitting> boat = fitting();
    if (boat.isEmpty()) {
      return new ToAnswer.BoatUnknown();
    }
    List<Trace> traces =
        chosen().stream().filter(this::fits).map(id -> trace(id, boat.get())).toList();
    return traces.isEmpty() ? new ToAnswer.NotCovered() : new ToAnswer.Faults(traces);
  }

  private Trace trace(String symptom, Fitting boat) {
    Fault fault =
        Fault.of(page(symptom).orElseThrow(), boat, workspace.library(), workspace.cases());
    Trace trace = Trace.begin(fault);
    for (TrailStep step : steps(symptom)) {
      trace = given(trace, step);
    }
    return trace;
  }

  /** An answer that the page has no longer is left out. */
  private static Trace given(Trace trace, TrailStep step) {
    if (!trace.fault().hasCheck(step.id())) {
      return trace;
    }
    try {
      return step instanceof TrailStep.Answered answered
          ? trace.answer(answered.id(), answered.answer())
          : trace.cantTell(step.id());
    } catch (IllegalArgumentException e) {
      return trace;
    }
  }

  private List<Page<Symptom>> toAsk() {
    return symptoms().stream()
        .filter(this::fits)
        .limit(MOST_TO_ASK)
        .flatMap(id -> page(id).stream())
        .toList();
  }

  private ToAnswer.About unsure() {
    List<Page<Symptom>> all = toAsk();
    return all.size() > 1 ? new ToAnswer.SymptomUnsure(all) : new ToAnswer.NotCovered();
  }
}
