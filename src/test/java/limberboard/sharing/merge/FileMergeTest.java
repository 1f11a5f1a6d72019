package limberboard.sharing.merge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FileMergeTest {
  private static final String PAGE = "articles/topics/a.md";
  private static final String BASE =
      "---\n"
          + "title: Bends\n"
          + "minutes: 5\n"
          + "# why\n"
          + "zones: [cabin]\n"
          + "---\n"
          + "# Use\n\n"
          + "One.\n\n"
          + "1. Tie.\n"
          + "2. Pull.\n"
          + "3. Look.\n";

  private static MergedText merge(String ours, String theirs) {
    return FileMerge.of(PAGE, BASE, ours, theirs);
  }

  private static String clean(MergedText merged) {
    assertThat(merged.conflicts()).isEmpty();
    return merged.text(conflict -> Choice.OURS);
  }

  @Test
  void neighbouringKeysAndItemsAreTakenFromBoth() {
    String ours = BASE.replace("title: Bends", "title: Knots").replace("2. Pull.", "2. Pull hard.");
    String theirs = BASE.replace("minutes: 5", "minutes: 6").replace("3. Look.", "3. Look twice.");
    assertThat(clean(merge(ours, theirs)))
        .isEqualTo(
            BASE.replace("Bends", "Knots")
                .replace("minutes: 5", "minutes: 6")
                .replace("Pull.", "Pull hard.")
                .replace("Look.", "Look twice."));
  }

  @Test
  void keysThatBothAddStandOnceWhereTheyAgreeAndAreOpenWhereNot() {
    String ours = BASE.replace("zones: [cabin]\n", "zones: [cabin]\nskill: owner\na: 1\n");
    String theirs = BASE.replace("zones: [cabin]\n", "zones: [cabin]\nskill: yard\na: 1\nb: 2\n");
    MergedText merged = merge(ours, theirs);
    assertThat(merged.conflicts())
        .containsExactly(new Conflict(PAGE, "skill", "", "", "skill: owner\n", "skill: yard\n"));
    assertThat(merged.text(conflict -> Choice.THEIRS))
        .contains("zones: [cabin]\nskill: yard\na: 1\nb: 2\n---");
  }

  @Test
  void aKeyThatOneTookOutAndTheOtherChangedIsOpen() {
    MergedText merged = merge(BASE.replace("minutes: 5\n", ""), BASE.replace("s: 5", "s: 9"));
    assertThat(merged.conflicts()).extracting(Conflict::part).containsExactly("minutes");
    assertThat(merged.text(conflict -> Choice.OURS)).isEqualTo(BASE.replace("minutes: 5\n", ""));
    assertThat(merged.text(conflict -> Choice.THEIRS)).isEqualTo(BASE.replace("s: 5", "s: 9"));
  }

  @Test
  void aParagraphThatBothChangedIsOpenWithItsHeadingAndNeverMarked() {
    MergedText merged = merge(BASE.replace("One.", "Ours."), BASE.replace("One.", "Theirs."));
    Conflict conflict = merged.conflicts().get(0);
    assertThat(conflict)
        .isEqualTo(new Conflict(PAGE, "body-1", "Use", "One.\n", "Ours.\n", "Theirs.\n"));
    for (Choice choice : Choice.values()) {
      assertThat(merged.text(each -> choice)).doesNotContain("<<<", ">>>", "===");
    }
    assertThat(merged.text(each -> Choice.BOTH)).contains("Ours.\nTheirs.\n");
    assertThat(merged.text(each -> Choice.BEFORE)).isEqualTo(BASE);
  }

  @Test
  void whatBothPutInAtOnePlaceIsOpen() {
    MergedText merged = merge(BASE + "4. Cut.\n", BASE + "4. Burn.\n");
    assertThat(merged.conflicts()).hasSize(1);
    assertThat(merged.text(each -> Choice.BOTH)).isEqualTo(BASE + "4. Cut.\n4. Burn.\n");
  }

  @Test
  void longListsOfKeysAreMergedByLinesThatDoNotTouch() {
    String base = "---\ntitle: A\ncauses:\n  - a\n  - b\n  - c\n  - d\n---\n";
    String ours = base.replace("  - a\n", "  - a1\n");
    String theirs = base.replace("  - d\n", "  - d\n  - e\n");
    assertThat(FileMerge.of(PAGE, base, ours, theirs).text(each -> Choice.BEFORE))
        .isEqualTo("---\ntitle: A\ncauses:\n  - a1\n  - b\n  - c\n  - d\n  - e\n---\n");
    MergedText touching = FileMerge.of(PAGE, base, ours, base.replace("  - b\n", "  - b1\n"));
    assertThat(touching.conflicts()).extracting(Conflict::part).containsExactly("causes");
  }

  @Test
  void lineEndsThatOneSideChangedAreNoConflict() {
    String ours = BASE.replace("\n", "\r\n");
    String theirs = BASE.replace("One.", "Two.");
    assertThat(clean(merge(ours, theirs))).isEqualTo(theirs.replace("\n", "\r\n"));
    assertThat(clean(merge(theirs, ours))).isEqualTo(theirs.replace("\n", "\r\n"));
  }

  @Test
  void logsAreMergedWithEveryLineOfBoth() {
    String base = "date,work,note\n2026-01-01,a,\n2026-01-05,b,\n";
    String ours = "date,work,note\n2026-01-05,b,\n2026-02-01,c,mine\n2026-03-01,e,\n";
    String theirs = base.replace("note", "note,hoists") + "2026-02-10,d,,20\n2026-03-01,e,\n";
    String merged = clean(FileMerge.of("boats/knot/log.csv", base, ours, theirs));
    assertThat(merged)
        .isEqualTo(
            "date,work,note,hoists\n"
                + "2026-01-05,b,\n"
                + "2026-02-01,c,mine\n"
                + "2026-02-10,d,,20\n"
                + "2026-03-01,e,\n");
  }

  @Test
  void logsWithOtherNewColumnsKeepEachCellUnderItsOwn() {
    String base = "date,work\n2026-01-01,a\n";
    String ours = "date,work,hoists\n2026-01-01,a\n2026-02-01,b,7\n";
    String theirs = "date,work,tacks\n2026-01-01,a\n2026-02-02,c,9\n";
    assertThat(clean(FileMerge.of("boats/knot/log.csv", base, ours, theirs)))
        .isEqualTo("date,work,hoists,tacks\n2026-01-01,a\n2026-02-01,b,7\n2026-02-02,c,,9\n");
  }

  @Test
  void aLineOfALogThatBothChangedStandsInBothForms() {
    String base = "date,work,note\n2026-01-01,a,x\n";
    String merged =
        clean(
            FileMerge.of(
                "boats/knot/log.csv", base, base.replace(",x", ",y"), base.replace(",x", ",z")));
    assertThat(merged.lines())
        .containsExactly("date,work,note", "2026-01-01,a,y", "2026-01-01,a,z");
  }

  @Test
  void wordsOfBothAreKept() {
    String base = "wet, damp\n";
    assertThat(
            clean(
                FileMerge.of(
                    "index/words/synonyms.txt", base, base + "rope, line", base + "mast, spar\n")))
        .isEqualTo("wet, damp\nrope, line\nmast, spar\n");
  }

  @Test
  void casesAndBoatsAreMergedByKey() {
    String base = "symptom: wet\ndate: 2026-01-01\n";
    MergedText merged =
        FileMerge.of("boats/cases/a.yaml", base, base + "cause: seal\n", base + "minutes: 5\n");
    assertThat(clean(merged).lines())
        .containsExactlyInAnyOrder("symptom: wet", "date: 2026-01-01", "cause: seal", "minutes: 5");
    assertThat(
            FileMerge.of("boats/cases/a.yaml", base, base + "cause: seal\n", base + "cause: x\n")
                .conflicts())
        .hasSize(1);
  }

  @Test
  void otherTextIsMergedByLinesOrOpenAsAWhole() {
    assertThat(clean(FileMerge.of("a.svg", "1\n2\n3\n4\n", "x\n2\n3\n4\n", "1\n2\n3\ny\n")))
        .isEqualTo("x\n2\n3\ny\n");
    assertThat(FileMerge.of("a.svg", "1\n", "2\n", "3\n").conflicts())
        .containsExactly(new Conflict("a.svg", Conflict.PAGE, "", "1\n", "2\n", "3\n"));
    assertThat(List.of(Choice.values())).hasSize(4);
  }
}
