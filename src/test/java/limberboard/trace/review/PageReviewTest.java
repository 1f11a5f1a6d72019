package limberboard.trace.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import limberboard.trace.Fault;
import limberboard.trace.RandomFaults;
import limberboard.trace.Yard;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageReviewTest {
  private static final Duration ENDLESS = Duration.ofMinutes(2);

  @TempDir Path folder;
  private Yard yard;

  @BeforeEach
  void makeYard() {
    yard =
        new Yard(folder).withBoats().mend("short", "owner", 20, "").mend("other", "owner", 30, "");
  }

  private List<String> warnings() {
    return yard.review().warnings().stream().map(Remark::pointer).toList();
  }

  private List<String> advice() {
    return yard.review().advice().stream().map(Remark::pointer).toList();
  }

  private static String twoCauses(String first, String second, String finds) {
    return """
    causes:
      - {id: one, title: One, weight: 3, %s}
      - {id: two, title: Two, weight: 3, %s}
    checks:
      - {id: look, ask: Look, how: Look., minutes: 1, answers: [yes, no], finds: {yes: {%s}}}
    """
        .formatted(first, second, finds);
  }

  @Test
  void twoCausesWithTheSameAnswersEverywhereCannotBeToldApart() {
    yard.symptom(twoCauses("mend: short", "mend: other", "one: usually, two: usually"));
    assertThat(yard.review().warnings())
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.pointer()).isEqualTo("/causes/0");
              assertThat(remark.wrong()).contains("no check tells \"one\" from \"two\"");
              assertThat(remark.right()).isNotBlank();
            });
  }

  /** Likelihoods count as the same within a thousand-millionth. */
  @ParameterizedTest
  @CsvSource({"0.5, 0", "0.5000000005, 0", "0.499999998, 1", "0.8, 1", "0, 1"})
  void aDifferenceInOneCheckTellsThemApart(double likelihood, int told) {
    yard.symptom(twoCauses("mend: short", "mend: other", "one: 0.5, two: " + likelihood));
    assertThat(warnings()).hasSize(1 - told);
  }

  @Test
  void causesWithTheSameMendNeedNotBeToldApart() {
    yard.symptom(twoCauses("mend: short", "mend: short", "one: usually, two: usually"));
    assertThat(warnings()).isEmpty();
  }

  @Test
  void causesThatNoBoatCanHaveBothOfNeedNotBeToldApart() {
    yard.symptom(
        twoCauses(
            "mend: short, fits: {fitted: seal-packed}",
            "mend: other, fits: {fitted: seal-lip}",
            "one: usually, two: usually"));
    assertThat(yard.review().faults()).hasSize(2);
    assertThat(warnings()).isEmpty();
  }

  @Test
  void aCheckThatFitsOneBoatOnlyTellsThemApart() {
    yard.symptom(
        """
        causes:
          - {id: one, title: One, weight: 3, mend: short}
          - {id: two, title: Two, weight: 3, mend: other}
        checks:
          - {id: look, ask: Look, how: Look., minutes: 1, fits: {fitted: seal-lip},
             answers: [yes, no], finds: {yes: {one: usually, two: rarely}}}
        """);
    assertThat(warnings()).isEmpty();
  }

  @Test
  void ofSeveralAlikeEachIsNamedOnce() {
    yard.mend("third", "owner", 25, "")
        .symptom(
            """
            causes:
              - {id: one, title: One, weight: 3, mend: short}
              - {id: two, title: Two, weight: 3, mend: other}
              - {id: three, title: Three, weight: 3, mend: third}
            checks:
              - {id: look, ask: Look, how: Look., minutes: 1, answers: [yes, no],
                 finds: {yes: {others: usually}}}
            """);
    assertThat(yard.review().warnings())
        .extracting(Remark::pointer)
        .containsExactly("/causes/0", "/causes/1");
    assertThat(yard.review().warnings().get(0).wrong()).contains("\"two\" or \"three\"");
  }

  /**
   * Trying both mends takes 50 minutes, so nothing is saved by 200 minutes of looking that tells no
   * more than one.
   */
  private static String twoChecks(String ofTheDearOne) {
    return """
    causes:
      - {id: one, title: One, weight: 3, mend: short}
      - {id: two, title: Two, weight: 3, mend: other}
    checks:
      - {id: look, ask: Look, how: Look., minutes: 1, answers: [yes, no],
         finds: {yes: {one: always, two: never}}}
      - {id: dear, ask: Look, how: Look., minutes: 200, answers: [yes, no], %s
         finds: {yes: {one: always, two: never}}}
    """
        .formatted(ofTheDearOne);
  }

  @Test
  void aCheckThatSavesLessThanItTakesIsIdle() {
    yard.symptom(twoChecks(""));
    assertThat(yard.review().advice())
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.pointer()).isEqualTo("/checks/1");
              assertThat(remark.wrong()).contains("\"dear\"").contains("once in a thousand");
            });
  }

  @Test
  void aCheckThatSafetyAsksForIsNeverIdle() {
    yard.symptom(twoChecks("comes-first: true, make-safe: Stand clear.,"));
    assertThat(advice()).doesNotContain("/checks/1");
  }

  @Test
  void aCheckForOtherBoatsIsNotIdle() {
    yard.symptom(twoChecks("fits: {built: 2030/..},"));
    assertThat(advice()).isEmpty();
  }

  /**
   * The mend of the common cause comes first. When it did not cure, the yard's cause leads, and the
   * yard is cheaper than the long mend of the rare cause, unless that is not rare.
   */
  private String threeCauses(String weight, String fits) {
    yard.mend("long", "owner", 230, "").mend("yards", "yard", 60, "");
    return """
    causes:
      - {id: common, title: Common, weight: 100, mend: short, cures: always}
      - {id: for-yard, title: Yard, weight: 5, mend: yards}
      - {id: rare, title: Rare, weight: %s, mend: long, fits: {%s}}
    checks: []
    """
        .formatted(weight, fits);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 1", "60, 0"})
  void aCauseThatNoPlanEndsAtIsNotReached(String weight, int unreached) {
    yard.symptom(threeCauses(weight, ""));
    assertThat(advice().stream().filter("/causes/2"::equals)).hasSize(unreached);
  }

  @Test
  void aCauseThatNoBoatCanHaveIsNotUnreached() {
    yard.symptom(threeCauses("0.05", "built: 2030/.."));
    assertThat(advice()).isEmpty();
  }

  /** The berth takes 5 minutes to lift, the panel 10 more; the yard costs 240. */
  @ParameterizedTest
  @CsvSource({
    "handy, 241, '', 1",
    "owner, 240, '', 0",
    "owner, 235, berth-lifted, 0",
    "owner, 235, panel-off, 1",
    "yard, 600, '', 0",
    "licensed, 600, '', 0"
  })
  void anOwnersMendDearerThanTheYardIsNamed(String skill, int minutes, String access, int dear) {
    yard.mend("short", skill, minutes, access)
        .symptom(twoCauses("mend: short", "mend: other", "one: usually, two: rarely"));
    assertThat(advice().stream().filter("/causes/0/mend"::equals)).hasSize(dear);
  }

  @Test
  void aMendThatPaysOnOneBoatIsNotDear() {
    yard.dearModel("stint-30")
        .boat("stint", "stint-30", 2015)
        .mend("short", "owner", 300, "")
        .symptom(twoCauses("mend: short", "mend: other", "one: usually, two: rarely"));
    assertThat(advice()).doesNotContain("/causes/0/mend");
  }

  @Test
  void withoutABoatThereIsNothingToSay(@TempDir Path empty) {
    yard = new Yard(empty).mend("short", "owner", 20, "").mend("other", "owner", 500, "");
    yard.symptom(twoCauses("mend: short", "mend: other", "one: usually, two: usually"));
    assertThat(yard.review().faults()).isEmpty();
    assertThat(warnings()).isEmpty();
    assertThat(advice()).isEmpty();
  }

  @Test
  void standsMendsThatAreNotThere() {
    yard.symptom(twoCauses("mend: no-such", "mend: nor-this", "one: usually, two: usually"));
    assertThat(warnings()).containsExactly("/causes/0");
    assertThat(advice()).allMatch(pointer -> pointer.matches("/(causes|checks)/[01]"));
  }

  @Test
  void standsAThousandCausesAndChecks() {
    Assertions.assertTimeoutPreemptively(
        ENDLESS,
        () -> {
          Fault fault = new RandomFaults(1).fault(1_000, 1_000);
          assertThat(new PageReview(fault.page(), List.of(fault)).warnings()).isEmpty();
          Fault small = new RandomFaults(2).fault(12, 12);
          assertThat(new PageReview(small.page(), List.of(small)).advice())
              .allMatch(remark -> remark.pointer().matches("/(causes|checks)/\\d+(/mend)?"));
        });
  }
}
