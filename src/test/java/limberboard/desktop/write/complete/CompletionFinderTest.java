package limberboard.desktop.write.complete;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can stand at the caret, which is written {@code |}. */
class CompletionFinderTest {
  private static final Library LIBRARY = SmallWorkspace.read().library();

  private static List<String> at(Kind kind, String text) {
    int caret = text.indexOf('|');
    String plain = text.replace("|", "");
    CompletionFinder finder =
        new CompletionFinder(LIBRARY, kind, "articles/" + kind.folder() + "/new.md");
    return finder.at(plain, caret).candidates().stream().map(Candidate::letters).toList();
  }

  @Test
  void aKeyIsCompletedAtTheBeginningOfALine() {
    assertThat(at(Kind.PROCEDURE, "---\ntitle: X\nski|\n---\n")).containsExactly("skill: ");
    assertThat(at(Kind.PROCEDURE, "---\n|\n---\n")).contains("title: ", "minutes: ", "zones: ");
  }

  @Test
  void oneOfAFewWordsIsCompletedBehindItsKey() {
    assertThat(at(Kind.PROCEDURE, "---\nskill: |\n---\n"))
        .contains("owner", "handy", "yard", "licensed");
  }

  @Test
  void namesAreCompletedInListsOfBothForms() {
    assertThat(at(Kind.SYMPTOM, "---\nzones: [bow, |]\n---\n")).isNotEmpty();
    assertThat(at(Kind.SYMPTOM, "---\nzones: [|]\n---\n"))
        .isEqualTo(at(Kind.SYMPTOM, "---\nzones:\n- |\n---\n"))
        .isEqualTo(at(Kind.SYMPTOM, "---\nzones:\n  - |\n---\n"));
  }

  @Test
  void keysAndNamesWithinAnEntryAreCompleted() {
    String causes = "---\ncauses:\n  - id: one\n    title: One\n    ";
    assertThat(at(Kind.SYMPTOM, causes + "we|\n---\n")).containsExactly("weight: ");
    assertThat(at(Kind.SYMPTOM, causes + "mend: repl|\n---\n")).contains("replace-gasket");
    assertThat(at(Kind.SYMPTOM, "---\ncauses:\n- id: one\n  mend: repl|\n---\n"))
        .contains("replace-gasket");
  }

  @Test
  void equipmentIsCompletedWithinACondition() {
    List<String> fitted = at(Kind.PROCEDURE, "---\nfits: {fitted: |}\n---\n");
    assertThat(fitted).isEqualTo(at(Kind.PROCEDURE, "---\nfits:\n  fitted: |\n---\n")).isNotEmpty();
  }

  @Test
  void likelihoodsAreCompletedBehindACause() {
    assertThat(
            at(
                Kind.SYMPTOM,
                "---\nchecks:\n  - id: c\n    finds:\n      salt:\n        one: us|\n---\n"))
        .containsExactly("usually");
  }

  @Test
  void aLinkIsCompletedWithItsWayFromThePage() {
    assertThat(at(Kind.SYMPTOM, "---\ntitle: X\n---\nSee [it](gask|"))
        .contains("../procedures/replace-gasket.md");
    assertThat(at(Kind.PROCEDURE, "---\ntitle: X\n---\nSee [it](gask|"))
        .contains("replace-gasket.md");
    assertThat(at(Kind.SYMPTOM, "---\ntitle: X\n---\nSee gask|"))
        .anyMatch(link -> link.matches("\\[.*\\]\\(\\.\\./procedures/replace-gasket\\.md\\)"));
  }

  @Test
  void nothingIsOfferedWhereNothingFits() {
    assertThat(at(Kind.PROCEDURE, "---\nskill: zzz|\n---\n")).isEmpty();
    assertThat(at(Kind.PROCEDURE, "---\nno-such: |\n---\n")).isEmpty();
  }

  @Test
  void figuresAreQuoted(@TempDir Path folder) {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/materials/glue.md",
        "---\ntitle: Glue\ngroup: adhesive\nunit: ml\nfigures:\n"
            + "  walk-on: {title: Walked on after, value: 24 h, source: a handbook}\n---\n");
    Library library = workspace.library();
    String topic = "articles/topics/new.md";
    assertThat(new CompletionFinder(library, Kind.TOPIC, topic).at("Wait walk", 9).candidates())
        .contains(
            new Candidate("[24 h](../materials/glue.md#walk-on)", "Glue: Walked on after", "24 h"));
    assertThat(
            new CompletionFinder(library, Kind.MATERIAL, "articles/materials/glue.md")
                .at("Wait [24 h](#w", 14)
                .candidates())
        .extracting(Candidate::letters)
        .containsExactly("#walk-on");
  }
}
