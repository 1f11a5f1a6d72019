package limberboard.letters.answer;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Trace;

/**
 * What is known of a letter that is to be answered.
 *
 * @param owner how its writer is addressed; empty where no name is known
 * @param boat the boat on the day of the answer; one that {@linkplain
 *     limberboard.boat.Boat#isEntered() nobody has entered} where only the model is known
 * @param urgent what is dangerous now, each in words that go on after "you write that"; empty when
 *     nothing is
 * @param about what it is about
 * @param changed what its writer tells otherwise than in an earlier letter, each a check's question
 *     with the answer that counts now
 */
public record ToAnswer(
    String owner, Optional<Fitting> boat, List<String> urgent, About about, List<String> changed) {
  /** Copies the lists. */
  public ToAnswer {
    urgent = List.copyOf(urgent);
    changed = List.copyOf(changed);
  }

  /** What is known of a first letter. */
  public ToAnswer(String owner, Optional<Fitting> boat, List<String> urgent, About about) {
    this(owner, boat, urgent, about, List.of());
  }

  /** What a letter is about. */
  public sealed interface About {}

  /**
   * Faults, each traced as far as the letter goes.
   *
   * @param traces one or more, the most important first
   */
  public record Faults(List<Trace> traces) implements About {
    /** Copies the list. */
    public Faults {
      traces = List.copyOf(traces);
    }
  }

  /**
   * A fault on a boat of which not even the model is known.
   *
   * @param symptoms what it may be, for what cannot wait until she is known; may be empty
   */
  public record BoatUnknown(List<Page<Symptom>> symptoms) implements About {
    /** Copies the list. */
    public BoatUnknown {
      symptoms = List.copyOf(symptoms);
    }

    /** One of which nothing is known. */
    public BoatUnknown() {
      this(List.of());
    }
  }

  /**
   * A fault that may be one of several symptoms.
   *
   * @param symptoms two or more
   */
  public record SymptomUnsure(List<Page<Symptom>> symptoms) implements About {
    /** Copies the list. */
    public SymptomUnsure {
      symptoms = List.copyOf(symptoms);
    }
  }

  /** A fault that the library does not cover. */
  public record NotCovered() implements About {}

  /**
   * No fault at all.
   *
   * @param matter such as {@code booking}, {@code question} or {@code thanks}: the {@code when} of
   *     a wording
   */
  public record NoFault(String matter) implements About {}

  /** Nothing that is to be answered: junk, or a letter that a program wrote. */
  public record NoAnswer() implements About {}
}
