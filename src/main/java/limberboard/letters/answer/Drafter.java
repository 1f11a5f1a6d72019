package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.ToAnswer.About;
import limberboard.library.Library;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.page.Wording;
import limberboard.library.value.LetterPart;
import limberboard.print.cut.Cautions;
import limberboard.trace.Trace;

/**
 * Drafts answers: what cannot wait first, then what it may be, every caution of what the letter
 * tells to do, and the next checks or the mend. The words between come from the library's wordings;
 * cautions do not, so that no wording can leave one out. Immutable; any thread, best not the event
 * thread.
 */
public final class Drafter {
  private static final String NOBODY = "";
  private final Library library;

  /** A drafter with a library's pages. */
  public Drafter(Library library) {
    this.library = library;
  }

  /** The draft of an answer; empty where nothing is to be answered. */
  public AnswerDraft draft(ToAnswer letter) {
    return letter.about() instanceof ToAnswer.NoAnswer
        ? new AnswerDraft(List.of(), List.of())
        : new Making(letter).draft();
  }

  /** One draft in the making. */
  private final class Making {
    private final ToAnswer letter;
    private final Wordings words;
    private final List<DraftBlock> blocks = new ArrayList<>();
    private final List<AskedCheck> questions = new ArrayList<>();
    private final List<String> pages = new ArrayList<>();
    private final Set<String> toldInFull = new HashSet<>();

    Making(ToAnswer letter) {
      this.letter = letter;
      words = new Wordings(library, letter.boat());
    }

    private void add(String id, List<DraftLine> lines) {
      blocks.add(new DraftBlock(id, lines));
    }

    AnswerDraft draft() {
      urgent();
      String owner = letter.owner().equals(NOBODY) ? "owner" : letter.owner();
      add("greeting", words.of(LetterPart.GREETING, Map.of("owner", owner)));
      emergencies();
      about(letter.about());
      add("closing", words.of(LetterPart.CLOSING));
      return new AnswerDraft(blocks, questions, pages.stream().distinct().toList());
    }

    /** What the letter says is dangerous now: what to do, in full. */
    private void urgent() {
      int number = 0;
      for (String danger : letter.urgent()) {
        number++;
        add("urgent/" + number, words.of(LetterPart.URGENT, danger, Map.of("danger", danger)));
        words
            .page(LetterPart.URGENT, danger)
            .map(page -> cautionsOf(page.details()))
            .ifPresent(cautions -> inFull("urgent", cautions));
      }
    }

    private List<WorkCaution> cautionsOf(Wording wording) {
      List<WorkCaution> all = new ArrayList<>();
      for (String id : CautionUse.ids(wording.cautions())) {
        library
            .caution(id)
            .map(page -> new WorkCautions(library, letter.boat()).of(page))
            .ifPresent(all::addAll);
      }
      return all;
    }

    private void inFull(String place, List<WorkCaution> cautions) {
      for (WorkCaution caution : cautions) {
        if (toldInFull.add(caution.id())) {
          add(place + "/" + caution.id(), BlockLines.of(List.of(Cautions.box(caution))));
        }
      }
    }

    /** What may be an emergency where the symptoms are. */
    private void emergencies() {
      List<WorkCaution> first = new ArrayList<>();
      if (letter.about() instanceof ToAnswer.Faults faults) {
        faults.traces().forEach(trace -> first.addAll(trace.fault().first()));
      } else if (letter.about() instanceof ToAnswer.SymptomUnsure unsure) {
        first.addAll(ofSymptoms(unsure.symptoms()));
      } else if (letter.about() instanceof ToAnswer.BoatUnknown unknown) {
        first.addAll(ofSymptoms(unknown.symptoms()));
      }
      List<WorkCaution> emergencies =
          first.stream()
              .filter(WorkCaution::emergency)
              .filter(caution -> !toldInFull.contains(caution.id()))
              .toList();
      if (!emergencies.isEmpty()) {
        add("emergency", words.of(LetterPart.EMERGENCY));
        inFull("emergency", emergencies);
      }
    }

    private List<WorkCaution> ofSymptoms(List<Page<Symptom>> symptoms) {
      WorkCautions cautions = new WorkCautions(library, letter.boat());
      return symptoms.stream().flatMap(page -> cautions.first(page.details()).stream()).toList();
    }

    private void about(About about) {
      if (about instanceof ToAnswer.Faults faults) {
        opening();
        changed();
        faults(faults.traces());
      } else if (about instanceof ToAnswer.BoatUnknown) {
        add("which-boat", words.of(LetterPart.WHICH_BOAT));
      } else if (about instanceof ToAnswer.SymptomUnsure unsure) {
        whichSymptom(unsure.symptoms());
      } else if (about instanceof ToAnswer.NotCovered) {
        add("not-covered", words.of(LetterPart.NOT_COVERED));
      } else if (about instanceof ToAnswer.NoFault none) {
        add("no-fault", words.of(LetterPart.NO_FAULT, none.matter(), Map.of()));
      }
    }

    private void opening() {
      String boat = letter.boat().map(known -> known.boat().name()).orElse("your boat");
      add("opening", words.of(LetterPart.OPENING, Map.of("boat", boat)));
      Optional<Fitting> assumed = letter.boat().filter(known -> !known.boat().isEntered());
      if (assumed.isPresent()) {
        add("model-only", words.of(LetterPart.MODEL_ONLY, Map.of("boat", boat)));
      }
    }

    private void changed() {
      if (!letter.changed().isEmpty()) {
        List<DraftLine> lines = new ArrayList<>(words.of(LetterPart.CHANGED));
        letter.changed().forEach(each -> lines.add(DraftLine.item(each)));
        add("changed", lines);
      }
    }

    private void faults(List<Trace> traces) {
      Map<String, Trace> each = new LinkedHashMap<>();
      traces.forEach(trace -> each.putIfAbsent(trace.fault().page().id(), trace));
      for (Trace trace : each.values()) {
        FaultBlocks fault =
            new FaultBlocks(library, words, trace, each.size() > 1, questions.size());
        blocks.addAll(fault.blocks());
        questions.addAll(fault.questions());
        pages.add(fault.page());
      }
    }

    private void whichSymptom(List<Page<Symptom>> symptoms) {
      List<DraftLine> lines = new ArrayList<>(words.of(LetterPart.WHICH_SYMPTOM));
      for (int i = 0; i < symptoms.size(); i++) {
        lines.add(DraftLine.item((i + 1) + ". " + symptoms.get(i).title() + "."));
      }
      add("which-symptom", lines);
    }
  }
}
