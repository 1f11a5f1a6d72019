package limberboard.boat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Caution;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.value.Condition;
import limberboard.words.Phrases;
import limberboard.words.Sentences;

/**
 * A caution of some work on a boat, in short and in full, with what brings it in.
 *
 * @param page the caution's whole page, cut to the boat; where the library cannot give it, one in
 *     its place that says so
 * @param because the title of the material or tool that brings it in; empty where the work names it
 *     itself
 * @param rule the one rule that matters for this work
 * @param bites words or phrases of a step at which it bites
 * @param emergency whether it may be an emergency at this moment: a symptom names it before any
 *     question, and its page says that it may be one
 * @param question what must be answered with yes for it to be an emergency; empty: it may be one as
 *     it stands
 */
public record WorkCaution(
    Page<Caution> page,
    String because,
    String rule,
    List<String> bites,
    boolean emergency,
    Optional<String> question) {

  /** Copies the list. */
  public WorkCaution {
    bites = List.copyOf(bites);
  }

  /**
   * The caution that is named, or one that says that its page is missing: never nothing.
   *
   * @param first whether a symptom names it before any question
   * @param fits whether a condition holds for the boat
   */
  static WorkCaution of(
      Library library, CautionUse use, String because, boolean first, Predicate<Condition> fits) {
    Page<Caution> page = library.caution(use.use()).orElseGet(() -> inPlaceOf(use.use()));
    Caution cut = page.details().cutTo(fits);
    return new WorkCaution(
        new Page<>(page.id(), page.path(), page.head(), cut, page.body(), page.bodyLine()),
        because,
        use.rule().isEmpty() ? cut.shortRule() : use.rule(),
        Stream.concat(cut.bites().stream(), use.at().stream()).distinct().toList(),
        first && cut.emergency(),
        Optional.of(use.question()).filter(asked -> first && !asked.isEmpty()));
  }

  private static Page<Caution> inPlaceOf(String id) {
    Head head =
        new Head(
            Sentences.spoken(id),
            "",
            List.of(),
            null,
            List.of(),
            Condition.ALWAYS,
            List.of(),
            Map.of());
    Caution caution =
        new Caution(
            "The page of this caution is missing or cannot be read.",
            List.of(
                Caution.Line.always(
                    "Do not begin before somebody who knows this danger has told you what to do.")),
            "",
            Optional.empty(),
            true,
            false,
            List.of());
    return new Page<>(id, "articles/cautions/" + id + ".md", head, caution, "", 1);
  }

  /** The same because of something; what is named already stands. */
  public WorkCaution because(String named) {
    return because.isEmpty()
        ? new WorkCaution(page, named, rule, bites, emergency, question)
        : this;
  }

  /** The same, brought in by a step, whatever brought it into that step. */
  public WorkCaution carriedBy(String step) {
    return new WorkCaution(page, step, rule, bites, emergency, question);
  }

  /**
   * The same, where other work carries it too: it bites where either does, it may be an emergency
   * when either may, and where the two have rules of their own the caution's own rule stands.
   */
  WorkCaution joined(WorkCaution other) {
    return new WorkCaution(
        page,
        because,
        rule.equals(other.rule) ? rule : page.details().shortRule(),
        Stream.concat(bites.stream(), other.bites.stream()).distinct().toList(),
        emergency || other.emergency,
        asked(other));
  }

  /** A question stands only as long as nobody who names it does without. */
  private Optional<String> asked(WorkCaution other) {
    if (emergency && other.emergency) {
      return question.isPresent() && other.question.isPresent() ? question : Optional.empty();
    }
    return emergency ? question : other.question;
  }

  /** The same with what a material or tool adds to what the work itself says: where it bites. */
  WorkCaution bitingAlsoAs(WorkCaution other) {
    return new WorkCaution(
        page,
        because,
        rule,
        Stream.concat(bites.stream(), other.bites.stream()).distinct().toList(),
        emergency,
        question);
  }

  /** The caution's id. */
  public String id() {
    return page.id();
  }

  /** The caution's title. */
  public String title() {
    return page.title();
  }

  /** The danger in a few words. */
  public String danger() {
    return page.details().shortDanger();
  }

  /** Whether it is the same caution with the same rule, whatever brings it in. */
  public boolean isSameAs(WorkCaution other) {
    return id().equals(other.id()) && rule.equals(other.rule);
  }

  /** Whether it bites at a step with these words. */
  public boolean bitesIn(Phrases step) {
    return bites.stream().anyMatch(step::has);
  }

  /** Whether it is a danger that kills. */
  public boolean grave() {
    return page.details().grave();
  }
}
