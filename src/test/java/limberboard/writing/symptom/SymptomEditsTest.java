package limberboard.writing.symptom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.library.page.Check;
import limberboard.writing.PageText;
import org.junit.jupiter.api.Test;

/** What is typed into the table changes its own letters and no others. */
class SymptomEditsTest {
  private static final String PAGE =
      """
      ---
      # written in spring
      title: Wet locker
      mine: {left: alone}
      zones: [cockpit] # behind the seat
      causes:
        - id: gasket
          title: The gasket is flat
          weight: 3 # ask the yard
          mend: replace-locker-gasket

        - id: drain
          title: 'The drain is blocked'
          mend:
      checks:
        - id: rain
          ask: After rain?
          how: >-
            Look after
            a wet night.
          minutes: 2
          answers: [rain, no-rain]
          finds:
            rain: {gasket: usually, others: rarely}
          said-as: {rain: [when it pours]}
      ---
      # Text stays
      causes: not these
      """;

  private static SymptomTable table(String text) {
    return (SymptomTable) SymptomTable.read(new PageText(text));
  }

  private static SymptomEdits edits(String text) {
    return new SymptomEdits(table(text));
  }

  private static SymptomEdits edits() {
    return edits(PAGE);
  }

  @Test
  void readsWhatStandsThereFinishedOrNot() {
    SymptomTable table = table(PAGE);
    assertThat(table.title()).isEqualTo("Wet locker");
    assertThat(table.zones()).containsExactly("cockpit");
    assertThat(table.causes())
        .extracting(TableCause::mend)
        .containsExactly("replace-locker-gasket", "");
    assertThat(table.causes().get(1).weighs()).isEmpty();
    assertThat(table.share(table.causes().get(0))).isEqualTo(1);
    TableCheck check = table.checks().get(0);
    assertThat(check.how()).isEqualTo("Look after a wet night.");
    assertThat(check.answers()).containsExactly("rain", "no-rain");
    assertThat(check.likelihood("rain", "gasket")).contains("usually");
    assertThat(check.likelihood("no-rain", "gasket")).isEmpty();
  }

  @Test
  void aLikelihoodReplacesItsOwnLetters() throws Unchangeable {
    assertThat(edits().likelihood(0, "rain", "gasket", Optional.of("even")).text())
        .isEqualTo(PAGE.replace("gasket: usually", "gasket: even"));
    assertThat(edits().likelihood(0, "no-rain", "drain", Optional.of("0.25")).text())
        .isEqualTo(
            PAGE.replace("others: rarely}\n", "others: rarely}\n      no-rain: {drain: 0.25}\n"));
    assertThat(edits().likelihood(0, "rain", Check.OTHERS, Optional.empty()).text())
        .isEqualTo(PAGE.replace(", others: rarely", ""));
  }

  @Test
  void figuresAndNamesReplaceTheirOwnLetters() throws Unchangeable {
    assertThat(edits().weight(0, "6").text()).isEqualTo(PAGE.replace("weight: 3 #", "weight: 6 #"));
    assertThat(edits().weight(1, ".5").text())
        .isEqualTo(PAGE.replace("    mend:\n", "    mend:\n    weight: 0.5\n"));
    assertThat(edits().mend(1, "clear-cockpit-drains").text())
        .isEqualTo(PAGE.replace("mend:\n", "mend: clear-cockpit-drains\n"));
    assertThat(edits().causeTitle(1, "The drain's \"elbow\" is blocked").text())
        .isEqualTo(PAGE.replace("'The drain is blocked'", "'The drain''s \"elbow\" is blocked'"));
    assertThat(edits().minutes(0, "12").text())
        .isEqualTo(PAGE.replace("minutes: 2", "minutes: 12"));
    assertThat(edits().ask(0, "Only after rain: yes?").text())
        .isEqualTo(PAGE.replace("ask: After rain?", "ask: \"Only after rain: yes?\""));
    assertThat(edits().zones(List.of("cockpit", "side-deck")).text())
        .isEqualTo(PAGE.replace("[cockpit]", "[cockpit, side-deck]"));
    assertThat(edits().title("A wet locker").text())
        .isEqualTo(PAGE.replace("title: Wet locker", "title: A wet locker"));
  }

  @Test
  void whatIsNotRightIsRefusedWithWhatWouldBe() {
    assertThatThrownBy(() -> edits().likelihood(0, "rain", "gasket", Optional.of("mostly")))
        .isInstanceOf(Unchangeable.class)
        .hasMessageContaining("mostly");
    assertThatThrownBy(() -> edits().likelihood(0, "rain", "gasket", Optional.of("1.2")))
        .isInstanceOf(Unchangeable.class);
    for (String wrong : List.of("0", "-1", "many", "1e9", "NaN")) {
      assertThatThrownBy(() -> edits().weight(0, wrong)).hasMessageContaining("greater than 0");
      assertThatThrownBy(() -> edits().minutes(0, wrong)).hasMessageContaining("greater than 0");
    }
    assertThatThrownBy(() -> edits().causeTitle(0, " ")).hasMessageContaining("needs a name");
    assertThatThrownBy(() -> edits().addAnswer(0, "no rain")).hasMessageContaining("already");
    assertThatThrownBy(() -> edits().addAnswer(0, "?!")).isInstanceOf(Unchangeable.class);
  }

  @Test
  void causesComeAndGoWithWhatTheChecksSayOfThem() throws Unchangeable {
    PageText more = edits().addCause("The lid is bent: by feet");
    assertThat(more.text())
        .isEqualTo(
            PAGE.replace(
                "    mend:\n",
                "    mend:\n  - id: lid-bent-by-feet\n    title: \"The lid is bent: by feet\"\n"
                    + "    weight: 1\n    mend:\n"));
    assertThat(edits(more.text()).removeCause(2).text()).isEqualTo(PAGE);
    PageText less = edits().removeCause(0);
    assertThat(less.text()).contains("rain: {others: rarely}").doesNotContain("gasket is flat");
    assertThat(table(less.text()).causes()).extracting(TableCause::id).containsExactly("drain");
    SymptomTable none = table(edits(less.text()).removeCause(0).text());
    assertThat(none.causes()).isEmpty();
    assertThat(edits(none.page().text()).addCause("Rain").text()).contains("id: rain");
  }

  @Test
  void checksComeAndGo() throws Unchangeable {
    PageText more = edits().addCheck("Is the lid bent?");
    assertThat(more.text())
        .isEqualTo(
            PAGE.replace(
                "said-as: {rain: [when it pours]}\n",
                "said-as: {rain: [when it pours]}\n"
                    + "  - id: lid-bent\n"
                    + "    ask: \"Is the lid bent?\"\n"
                    + "    how:\n"
                    + "    minutes:\n"
                    + "    answers: []\n"));
    PageText answered = edits(more.text()).addAnswer(1, "Yes, it is");
    assertThat(answered.text()).contains("answers: [yes-it-is]");
    assertThat(edits(more.text()).removeCheck(1).text()).isEqualTo(PAGE);
    assertThat(table(edits().removeCheck(0).text()).checks()).isEmpty();
  }

  @Test
  void anAnswerIsRenamedWithAllThatNamesIt() throws Unchangeable {
    assertThat(edits().renameAnswer(0, 0, "After rain").text())
        .isEqualTo(
            PAGE.replace("[rain, no", "[after-rain, no")
                .replace("rain: {gasket", "after-rain: {gasket")
                .replace("{rain: [when", "{after-rain: [when"));
    assertThat(table(edits().removeAnswer(0, 0).text()).checks().get(0).finds()).isEmpty();
  }

  @Test
  void lineEndsAndTheMarkStay() throws Unchangeable {
    String windows = "\uFEFF" + PAGE.replace("\n", "\r\n");
    String now = edits(windows).addCause("The lid is bent").text();
    assertThat(now).startsWith("\uFEFF---\r\n").endsWith(windows.substring(windows.length() - 40));
    assertThat(now.replace("\r\n", "")).doesNotContain("\n");
    assertThat(edits(now).removeCause(2).text()).isEqualTo(windows);
  }

  @Test
  void idsThatStandTwiceAreFilledEachInItsPlace() throws Unchangeable {
    String twice = PAGE.replace("id: drain", "id: gasket");
    assertThat(edits(twice).weight(1, "4").text())
        .isEqualTo(twice.replace("    mend:\n", "    mend:\n    weight: 4\n"));
    PageText one = edits(twice).removeCause(1);
    assertThat(one.text()).contains("rain: {gasket: usually");
    assertThat(table(edits(twice).addCause("Gasket").text()).causes())
        .extracting(TableCause::id)
        .containsExactly("gasket", "gasket", "gasket-2");
  }

  @Test
  void aBrokenHeaderIsSaidAndLeftAlone() {
    for (String broken :
        List.of(
            "no header at all\n",
            "---\ntitle: [\n---\n",
            "---\ntitle: a\ntitle: b\n---\n",
            "---\ncauses: salt\n---\n",
            "---\ncauses:\n  - salt\n---\n",
            "---\n- a\n- b\n---\n")) {
      SymptomRead read = SymptomTable.read(new PageText(broken));
      assertThat(read).as(broken).isInstanceOf(SymptomRead.Unreadable.class);
      assertThat(((SymptomRead.Unreadable) read).wrong()).isNotBlank();
      assertThat(((SymptomRead.Unreadable) read).right()).isNotBlank();
    }
  }

  @Test
  void everyWordOfTheDemoIsChangedAloneAndBack() throws IOException, Unchangeable {
    int changed = 0;
    try (Stream<Path> pages = Files.list(Path.of("articles/symptoms"))) {
      for (Path file : pages.sorted().limit(4).toList()) {
        String text = Files.readString(file);
        for (TableCheck check : table(text).checks()) {
          for (String answer : check.finds().keySet()) {
            String cause = check.finds().get(answer).keySet().iterator().next();
            String old = check.likelihood(answer, cause).orElseThrow();
            String other = old.equals("even") ? "never" : "even";
            PageText now =
                edits(text).likelihood(check.number(), answer, cause, Optional.of(other));
            assertThat(differing(text, now.text())).as("%s %s", file, check.id()).isEqualTo(1);
            assertThat(
                    edits(now.text())
                        .likelihood(check.number(), answer, cause, Optional.of(old))
                        .text())
                .isEqualTo(text);
            changed++;
          }
        }
      }
    }
    assertThat(changed).isGreaterThan(30);
  }

  private static int differing(String one, String other) {
    List<String> before = new ArrayList<>(Arrays.asList(one.split("\n", -1)));
    List<String> after = Arrays.asList(other.split("\n", -1));
    assertThat(after).hasSameSizeAs(before);
    int different = 0;
    for (int i = 0; i < before.size(); i++) {
      different += before.get(i).equals(after.get(i)) ? 0 : 1;
    }
    return different;
  }

  @Test
  void thirtyCausesAndTwentyChecksAreFilled() throws Unchangeable {
    PageText page = new PageText("---\ntitle: Large\n---\n");
    for (int i = 0; i < 30; i++) {
      page = edits(page.text()).addCause("Cause number " + i);
    }
    for (int i = 0; i < 20; i++) {
      page = edits(page.text()).addCheck("Question number " + i + "?");
      page = edits(page.text()).addAnswer(i, "yes");
      page = edits(page.text()).addAnswer(i, "no");
    }
    SymptomTable table = table(page.text());
    for (TableCause cause : table.causes()) {
      page =
          edits(page.text())
              .likelihood(cause.number() % 20, "yes", cause.id(), Optional.of("often"));
    }
    table = table(page.text());
    assertThat(table.causes()).hasSize(30).extracting(TableCause::id).doesNotHaveDuplicates();
    assertThat(table.checks()).hasSize(20).extracting(TableCheck::id).doesNotHaveDuplicates();
    assertThat(table.checks().stream().mapToInt(c -> c.finds().get("yes").size()).sum())
        .isEqualTo(30);
  }
}
