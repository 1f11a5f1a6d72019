package limberboard.letters.reply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.Drafter;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.recognise.Recognised;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Urgent;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.words.Sentences;

/** Makes of what was told what there is to answer. Immutable. */
final class Answerable {
  private static final double SURE = 0.5;
  private static final int UNSURE_OF = 3;
  private static final String EARLIER = "an earlier letter of the conversation";

  private final Workspace workspace;
  private final Drafter drafter;
  private final Matters matters = new Matters();

  Answerable(Workspace workspace, Drafter drafter) {
    this.workspace = workspace;
    this.drafter = drafter;
  }

  /** The reply to a letter that a program wrote: none. */
  Reply automatic(Recognition seen) {
    return new Reply(
        seen,
        List.of(),
        seen.boat(),
        seen.model(),
        Optional.empty(),
        seen.symptoms(),
        List.of(),
        List.of(),
        new ToAnswer("", Optional.empty(), List.of(), new ToAnswer.NoAnswer()));
  }

  /** The reply to a letter that tells of these faults. */
  Reply reply(
      Letter letter,
      Recognition seen,
      List<KeptLetter> earlier,
      Optional<Fitting> boat,
      List<ToldFault> faults) {
    List<ToldFault> traced = faults.stream().filter(fault -> isFor(fault, boat)).toList();
    List<Trace> traces =
        boat.map(known -> traced.stream().map(fault -> trace(fault, known)).toList())
            .orElse(List.of());
    List<Suspect> symptoms = symptoms(seen, faults);
    ToAnswer toAnswer =
        new ToAnswer(
            letter.head().from().map(Mailbox::name).orElse(""),
            boat,
            seen.urgent().map(Urgent::what).stream().toList(),
            about(seen, traces, boat, symptoms),
            changed(traced));
    return new Reply(
        seen,
        earlier,
        seen.boat()
            .or(
                () ->
                    boat.filter(known -> known.boat().isEntered())
                        .map(known -> new Recognised(known.boat().id(), EARLIER))),
        seen.model()
            .or(() -> boat.map(known -> new Recognised(known.boat().model().id(), EARLIER))),
        boat,
        symptoms,
        faults,
        traces,
        toAnswer);
  }

  private boolean isFor(ToldFault fault, Optional<Fitting> boat) {
    Optional<Page<Symptom>> page = workspace.library().symptom(fault.symptom());
    return page.isPresent()
        && boat.filter(known -> known.fits(page.get().head().fits())).isPresent();
  }

  private Trace trace(ToldFault told, Fitting boat) {
    Page<Symptom> page = workspace.library().symptom(told.symptom()).orElseThrow();
    Fault fault = Fault.of(page, boat, workspace.library(), workspace.cases());
    Trace trace = Trace.begin(fault);
    for (ToldAnswer each : told.told()) {
      if (fault.hasCheck(each.check())) {
        Trace before = trace;
        trace =
            each.answer()
                .map(answer -> before.answer(each.check(), answer))
                .orElseGet(() -> before.cantTell(each.check()));
      }
    }
    return trace;
  }

  /** Those of the letter, and before them those that it is about only within its conversation. */
  private static List<Suspect> symptoms(Recognition seen, List<ToldFault> faults) {
    Set<String> own = seen.symptoms().stream().map(Suspect::id).collect(Collectors.toSet());
    List<Suspect> all = new ArrayList<>();
    faults.stream()
        .map(ToldFault::suspect)
        .filter(suspect -> !own.contains(suspect.id()))
        .forEach(suspect -> all.add(new Suspect(suspect.id(), suspect.chance(), List.of())));
    all.addAll(seen.symptoms());
    return all;
  }

  private ToAnswer.About about(
      Recognition seen, List<Trace> traces, Optional<Fitting> boat, List<Suspect> symptoms) {
    List<Page<Symptom>> likely =
        symptoms.stream()
            .limit(UNSURE_OF)
            .flatMap(suspect -> workspace.library().symptom(suspect.id()).stream())
            .toList();
    if (!symptoms.isEmpty() && boat.isEmpty()) {
      return new ToAnswer.BoatUnknown(likely);
    }
    if (isUnsure(symptoms, traces)) {
      return new ToAnswer.SymptomUnsure(likely);
    }
    if (!traces.isEmpty()) {
      return new ToAnswer.Faults(traces);
    }
    return seen.fault() || !symptoms.isEmpty()
        ? new ToAnswer.NotCovered()
        : new ToAnswer.NoFault(matters.of(seen.text()));
  }

  /** Whether the likeliest symptom is less likely than not, and another half as likely. */
  private static boolean isUnsure(List<Suspect> symptoms, List<Trace> traces) {
    boolean told = traces.stream().anyMatch(trace -> !trace.answers().isEmpty());
    return !told
        && symptoms.size() > 1
        && symptoms.get(0).chance() < SURE
        && symptoms.get(1).chance() >= symptoms.get(0).chance() / 2;
  }

  private List<String> changed(List<ToldFault> faults) {
    List<String> changed = new ArrayList<>();
    for (ToldFault fault : faults) {
      for (ToldAnswer each : fault.told()) {
        if (each.isNow() && each.isChanged()) {
          changed.add(
              question(fault.symptom(), each.check())
                  + " Before: "
                  + Sentences.spoken(each.before().orElseThrow())
                  + ". Now: "
                  + each.answer().map(Sentences::spoken).orElse("cannot tell")
                  + ".");
        }
      }
    }
    return changed;
  }

  /** What a check asks. */
  private String question(String symptom, String check) {
    return workspace
        .library()
        .symptom(symptom)
        .flatMap(page -> page.details().check(check))
        .map(Check::ask)
        .orElse(check);
  }

  /** The pages of faults. */
  List<Page<Symptom>> pages(List<ToldFault> faults) {
    return faults.stream()
        .flatMap(fault -> workspace.library().symptom(fault.symptom()).stream())
        .toList();
  }

  /** Words that say what a fault is. */
  String words(ToldFault fault) {
    return pages(List.of(fault)).stream()
        .map(page -> page.title() + ". " + String.join(". ", page.head().saidAs()) + ".")
        .collect(Collectors.joining());
  }

  /** The checks that a draft about faults asks for. */
  List<AskedCheck> asked(List<ToldFault> faults, Optional<Fitting> boat) {
    List<Trace> traces =
        boat.stream()
            .flatMap(
                known ->
                    faults.stream()
                        .filter(fault -> isFor(fault, boat))
                        .map(fault -> trace(fault, known)))
            .toList();
    return traces.isEmpty()
        ? List.of()
        : drafter.draft(new ToAnswer("", boat, List.of(), new ToAnswer.Faults(traces))).questions();
  }
}
