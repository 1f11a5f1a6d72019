package limberboard.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.boat.CaseOutcome;
import limberboard.boat.RecordedCase;
import limberboard.library.Library;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.value.Word;
import limberboard.words.CountWords;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * What an author might write or mend next, from what recorded cases say: causes that no page lists,
 * checks that owners cannot answer, mends that do not cure, pages that never helped, and procedures
 * whose minutes are off. {@link #ranked} puts that first which weighs most.
 */
public final class NextPages {
  private static final int FEWEST = 3;
  private static final double OFTEN = 0.3;
  private static final double HALF = 0.5;

  private NextPages() {}

  /** Why a page is named. */
  public enum Kind implements Word {
    /** The cause was something else. */
    SOMETHING_ELSE(1),
    /** Owners cannot answer the check. */
    NOT_ANSWERED(0.5),
    /** What the page says did not cure. */
    NOT_CURED(1),
    /** Its minutes are not what the cases took. */
    MINUTES_OFF(0.25),
    /** No case of it was ever put down to a cause of it. */
    NEVER_HELPED(1),
    /** Letters tell of a fault that no page covers. */
    LETTERS(1),
    /** Searches found nothing, or nothing that was opened. */
    SEARCHES(0.5);

    private final double worth;

    Kind(double worth) {
      this.worth = worth;
    }

    /**
     * How much one case, letter or search of this kind counts in the ranking: 1 where somebody was
     * left without help, half where they may have gone on without it or have tried several words
     * for one thing, a quarter where help came and only its figures are wrong. A judgement, no
     * measurement.
     */
    public double worth() {
      return worth;
    }
  }

  /**
   * Something to write.
   *
   * @param kind why
   * @param page the page's id; empty where there is none yet
   * @param part the check within it; otherwise empty
   * @param cases how many cases, letters or searches speak for it
   * @param todo what to do
   * @param evidence what they say
   * @param examples ids of some of these cases, the latest first, or the letters' file names
   * @param words what people say for it, where there is no page yet
   */
  public record Hint(
      Kind kind,
      String page,
      String part,
      int cases,
      String todo,
      String evidence,
      List<String> examples,
      List<String> words) {
    /** Copies the lists. */
    public Hint {
      examples = List.copyOf(examples);
      words = List.copyOf(words);
    }

    /** About a page that there is. */
    Hint(
        Kind kind,
        String page,
        String part,
        int cases,
        String todo,
        String evidence,
        List<String> examples) {
      this(kind, page, part, cases, todo, evidence, examples, List.of());
    }

    /** What it counts in the ranking: how many times, times the worth of one. */
    public double weight() {
      return cases * kind.worth();
    }

    /** Whether it asks for a page that is not there yet. */
    public boolean isNew() {
      return page.isEmpty();
    }
  }

  /** What the cases suggest, that which weighs most first. */
  public static List<Hint> of(Library library, List<RecordedCase> cases) {
    List<RecordedCase> closed =
        cases.stream()
            .filter(each -> !each.isOpen())
            .sorted(Comparator.comparing(RecordedCase::date).reversed())
            .toList();
    List<Hint> hints = new ArrayList<>();
    for (Page<Symptom> page : library.all(Symptom.class)) {
      List<RecordedCase> own =
          closed.stream().filter(each -> each.symptom().equals(page.id())).toList();
      somethingElse(page, own, hints);
      neverHelped(page, own, hints);
      page.details().checks().forEach(check -> notAnswered(page, check, own, hints));
    }
    Map<String, List<RecordedCase>> byMend =
        closed.stream()
            .filter(each -> each.end().mend().isPresent())
            .collect(
                Collectors.groupingBy(
                    each -> each.end().mend().orElseThrow(), TreeMap::new, Collectors.toList()));
    byMend.forEach(
        (mend, own) ->
            library
                .procedure(mend)
                .ifPresent(
                    page -> {
                      notCured(page, own, hints);
                      MinutesOff.of(page, own).ifPresent(hints::add);
                    }));
    return ranked(hints);
  }

  /** Hints in one list, that which weighs most first. */
  public static List<Hint> ranked(List<Hint> hints) {
    return hints.stream()
        .sorted(
            Comparator.comparingDouble(Hint::weight)
                .reversed()
                .thenComparing(Hint::page)
                .thenComparing(Hint::todo))
        .toList();
  }

  /** A page to which no case was ever put down. */
  private static void neverHelped(Page<Symptom> page, List<RecordedCase> own, List<Hint> hints) {
    boolean helped =
        own.stream()
            .flatMap(each -> each.provenCause().stream())
            .anyMatch(cause -> !cause.equals(Symptom.SOMETHING_ELSE));
    if (own.size() >= FEWEST && !helped) {
      hints.add(
          new Hint(
              Kind.NEVER_HELPED,
              page.id(),
              "",
              own.size(),
              "look whether " + Sentences.quoted(page.title()) + " leads anywhere",
              "none of "
                  + CountWords.of(own.size(), "closed case")
                  + " was put down to a cause that the page lists",
              examples(own)));
    }
  }

  static List<String> examples(List<RecordedCase> cases) {
    return cases.stream().limit(FEWEST).map(RecordedCase::id).toList();
  }

  private static void somethingElse(Page<Symptom> page, List<RecordedCase> own, List<Hint> hints) {
    List<RecordedCase> other =
        own.stream()
            .filter(each -> each.provenCause().filter(Symptom.SOMETHING_ELSE::equals).isPresent())
            .toList();
    if (other.isEmpty()) {
      return;
    }
    List<String> words =
        other.stream()
            .map(each -> each.end().found())
            .filter(found -> !found.isEmpty())
            .map(Sentences::quoted)
            .distinct()
            .toList();
    String found = words.isEmpty() ? "; nobody wrote what it was" : ": " + String.join(", ", words);
    hints.add(
        new Hint(
            Kind.SOMETHING_ELSE,
            page.id(),
            "",
            other.size(),
            "add the cause to " + Sentences.quoted(page.title()),
            other.size()
                + " of "
                + CountWords.of(own.size(), "case")
                + " had a cause that the page does not list"
                + found,
            examples(other)));
  }

  private static void notAnswered(
      Page<Symptom> page, Check check, List<RecordedCase> own, List<Hint> hints) {
    List<RecordedCase> not =
        own.stream().filter(each -> each.cantTell().contains(check.id())).toList();
    long told = own.stream().filter(each -> each.answers().containsKey(check.id())).count();
    double share = (double) not.size() / (not.size() + told);
    if (not.size() < FEWEST || share < OFTEN) {
      return;
    }
    hints.add(
        new Hint(
            Kind.NOT_ANSWERED,
            page.id(),
            check.id(),
            not.size(),
            "say better how to make the check " + Sentences.quoted(check.ask()) + ", or draw it",
            not.size()
                + " of "
                + (not.size() + told)
                + " owners who were asked could not tell ("
                + PerCent.words(share)
                + ")",
            examples(not)));
  }

  private static void notCured(Page<Procedure> page, List<RecordedCase> own, List<Hint> hints) {
    List<RecordedCase> not =
        own.stream()
            .filter(each -> each.end().outcome().filter(CaseOutcome.NOT_MENDED::equals).isPresent())
            .toList();
    if (not.size() < FEWEST || not.size() < HALF * own.size()) {
      return;
    }
    hints.add(
        new Hint(
            Kind.NOT_CURED,
            page.id(),
            "",
            not.size(),
            "look whether " + Sentences.quoted(page.title()) + " leaves something out",
            not.size() + " of " + own.size() + " times it was done it did not cure",
            examples(not)));
  }
}
