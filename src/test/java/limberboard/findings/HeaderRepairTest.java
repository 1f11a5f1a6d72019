package limberboard.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import limberboard.proofread.rule.HeaderMend;
import org.junit.jupiter.api.Test;

/** One entry of a header's list is changed, and everything else stays to the letter. */
class HeaderRepairTest {
  private static Optional<String> adds(String list, String id, String text) {
    return new HeaderRepair("articles/procedures/a.md", new HeaderMend.Adds(list, id)).in(text);
  }

  private static Optional<String> takesOut(int at, String text) {
    return new HeaderRepair("articles/procedures/a.md", new HeaderMend.TakesOut("/answered", at))
        .in(text);
  }

  @Test
  void anEntryIsAddedInTheLettersOfTheList() {
    assertThat(adds("/tools", "torch", "---\ntitle: A # so\ntools: [saw]\n---\nBody.\n"))
        .contains("---\ntitle: A # so\ntools: [saw, torch]\n---\nBody.\n");
    assertThat(adds("/tools", "torch", "---\r\ntools:\r\n  - use: saw\r\n  - axe # old\r\n---\r\n"))
        .contains("---\r\ntools:\r\n  - use: saw\r\n  - axe # old\r\n  - torch\r\n---\r\n");
    assertThat(adds("/tools", "torch", "---\ntitle: A\n---\n"))
        .contains("---\ntitle: A\ntools: [torch]\n---\n");
    assertThat(adds("/tools", "torch", "---\ntitle: A\ntools: []\n---\n"))
        .contains("---\ntitle: A\ntools: [torch]\n---\n");
  }

  @Test
  void aListWithinACheckIsBegun() {
    String text = "---\nchecks:\n  - id: one\n    how: Look.\n  - id: two\n    how: Listen.\n---\n";
    assertThat(adds("/checks/1/cautions", "gas", text))
        .contains(text.replace("    how: Listen.\n", "    how: Listen.\n    cautions: [gas]\n"));
  }

  @Test
  void nothingIsChangedWhereThatIsNotCertain() {
    assertThat(adds("/tools", "torch", "---\ntools: [torch]\n---\n")).isEmpty();
    assertThat(adds("/tools", "torch", "---\ntools: [{use: torch}]\n---\n")).isEmpty();
    assertThat(adds("/tools", "torch", "---\ntools: saw\n---\n")).isEmpty();
    assertThat(adds("/tools", "torch", "---\ntools: [saw\n---\n")).isEmpty();
    assertThat(adds("/tools", "torch", "no header\n")).isEmpty();
    assertThat(takesOut(2, "---\nanswered: [{rule: a, why: b}, {rule: c, why: d}]\n---\n"))
        .isEmpty();
  }

  @Test
  void aFindingIsAnsweredBesideOtherAnswers() {
    HeaderMend answers = new HeaderMend.Answers("not-listed", "soapy water", "so: it is there");
    HeaderRepair step = new HeaderRepair("articles/procedures/a.md", answers);
    String entry = "{rule: not-listed, about: soapy water, why: \"so: it is there\"}";
    assertThat(step.in("---\ntitle: A\n---\n"))
        .contains("---\ntitle: A\nanswered: [" + entry + "]\n---\n");
    assertThat(step.in("---\nanswered: [{rule: a, why: b}]\n---\n"))
        .contains("---\nanswered: [{rule: a, why: b}, " + entry + "]\n---\n");
  }

  @Test
  void anAnswerIsTakenOutAndTheLastOneWithItsKey() {
    String two = "---\nanswered:\n  - {rule: a, why: b}\n  - {rule: c, why: d}\n---\n";
    assertThat(takesOut(0, two)).contains("---\nanswered:\n  - {rule: c, why: d}\n---\n");
    assertThat(takesOut(0, "---\ntitle: A\nanswered: [{rule: a, why: b}]\n---\n"))
        .contains("---\ntitle: A\n---\n");
  }
}
