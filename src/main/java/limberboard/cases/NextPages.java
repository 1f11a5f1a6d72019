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
import limberboard.words.CountWords;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/**
 * What an author might write or mend next, from what recorded cases say: causes that no page lists,
 * checks that owners cannot answer, mends that do not cure, and procedures whose minutes are off.
 * The first has most cases behind it.
 */
public final class NextPages {
  private static final int FEWEST = 3;
  private static final double OFTEN = 0.3;
  private static final double HALF = 0.5;
  private static final double SURE = 2;
  private static final double FAR = 1.25;

  private NextPages() {}

  /** Why a page is named. */
  public enum Kind {
    /** The cause was something else. */
    SOMETHING_ELSE,
    /** Owners cannot answer the check. */
    NOT_ANSWERED,
    /** What the page says did not cure. */
    NOT_CURED,
    /** Its minutes are not what the cases took. */
    MINUTES_OFF
  }

  /**
   * Something to write.
   *
   * @param kind why
   * @param page the page's id
   * @param part the check within it; otherwise empty
   * @param cases how many cases speak for it
   * @param todo what to do
   * @param evidence what the cases say
   * @param examples ids of some of these cases, the latest first
   */
  public record Hint(
      Kind kind,
      String page,
      String part,
      int cases,
      String todo,
      String evidence,
      List<String> examples) {
    /** Copies the examples. */
    public Hint {
      examples = List.copyOf(examples);
    }
  }

  /** What the cases suggest, that with most cases behind it first. */
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
                      minutesOff(page, own, hints);
                    }));
    hints.sort(Comparator.comparingInt(Hint::cases).reversed().thenComparing(Hint::page));
    return List.copyOf(hints);
  }

  private static List<String> examples(List<RecordedCase> cases) {
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

  /**
   * Minutes are compared as ratios to the page's; they are off when the mean of the ratios'
   * logarithms lies more than two standard errors from 0, and the page a quarter or more from it.
   */
  private static void minutesOff(Page<Procedure> page, List<RecordedCase> own, List<Hint> hints) {
    List<RecordedCase> timed =
        own.stream().filter(each -> each.end().mendMinutes().orElse(0) > 0).toList();
    double says = page.details().minutes();
    if (timed.size() < FEWEST || !(says > 0)) {
      return;
    }
    double[] logs =
        timed.stream()
            .mapToDouble(each -> Math.log(each.end().mendMinutes().orElseThrow() / says))
            .toArray();
    double mean = 0;
    for (double log : logs) {
      mean += log / logs.length;
    }
    double squares = 0;
    for (double log : logs) {
      squares += (log - mean) * (log - mean);
    }
    double error = Math.sqrt(squares / (logs.length - 1) / logs.length);
    if (Math.abs(mean) < Math.log(FAR) || Math.abs(mean) < SURE * error) {
      return;
    }
    long took = Math.round(says * Math.exp(mean));
    hints.add(
        new Hint(
            Kind.MINUTES_OFF,
            page.id(),
            "",
            timed.size(),
            "write " + took + " minutes on " + Sentences.quoted(page.title()),
            "it says "
                + Math.round(says)
                + " minutes; "
                + CountWords.of(timed.size(), "case")
                + " took "
                + took
                + ", the geometric mean",
            examples(timed)));
  }
}
