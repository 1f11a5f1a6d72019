package limberboard.letters.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Pieces that a person has edited stay when the others are written anew. */
class AnswerDraftTest {
  private static AnswerDraft draft(String... idsAndTexts) {
    return new AnswerDraft(
        Stream.iterate(0, i -> i < idsAndTexts.length, i -> i + 2)
            .map(
                i ->
                    new DraftBlock(
                        idsAndTexts[i], List.of(DraftLine.paragraph(idsAndTexts[i + 1]))))
            .toList(),
        List.of());
  }

  private static List<String> ids(AnswerDraft draft) {
    return draft.blocks().stream().map(DraftBlock::id).toList();
  }

  private static DraftBlock block(AnswerDraft draft, String id) {
    return draft.block(id).orElseThrow();
  }

  private static final AnswerDraft OLD =
      draft("hello", "Hello", "likely", "A", "check/x", "X", "end", "Bye");

  @Test
  void whatNobodyTouchedIsWrittenAnew() {
    AnswerDraft fresh = draft("hello", "Hello", "likely", "B", "mend", "M", "end", "Bye");
    assertThat(OLD.redrafted(fresh)).isEqualTo(fresh);
  }

  @Test
  void anEditedPieceStaysAndSaysThatItsGroundsChangedOnlyWhenTheyDid() {
    AnswerDraft mine = OLD.edited("likely", "Mine").edited("end", "See you");
    AnswerDraft now = mine.redrafted(draft("hello", "Hello", "likely", "B", "end", "Bye"));
    assertThat(now.text()).isEqualTo("Hello\n\nMine\n\nSee you\n");
    assertThat(block(now, "likely").groundsChanged()).isTrue();
    assertThat(block(now, "end").groundsChanged()).isFalse();
    AnswerDraft back = now.redrafted(OLD);
    assertThat(block(back, "likely").groundsChanged()).isFalse();
    assertThat(back.text()).isEqualTo("Hello\n\nMine\n\nX\n\nSee you\n");
  }

  @Test
  void editingItOnceMoreTakesTheNewGrounds() {
    AnswerDraft now =
        OLD.edited("likely", "Mine").redrafted(draft("hello", "Hello", "likely", "B"));
    assertThat(block(now.edited("likely", "Mine, again"), "likely").groundsChanged()).isFalse();
  }

  @Test
  void anEditedPieceThatWouldNotBeWrittenAnyMoreStaysAtItsPlace() {
    AnswerDraft mine = OLD.edited("check/x", "Look here").edited("hello", "Hi");
    AnswerDraft now =
        mine.redrafted(draft("opening", "O", "likely", "B", "mend", "M", "end", "Bye"));
    assertThat(ids(now)).containsExactly("hello", "opening", "likely", "check/x", "mend", "end");
    assertThat(block(now, "check/x").groundsChanged()).isTrue();
    assertThat(now.text()).contains("Look here");
  }

  @Test
  void anEditCanBeTakenBackAndSoCanOneThatWritesTheSameWords() {
    AnswerDraft mine = OLD.edited("likely", "Mine");
    assertThat(mine.asWritten("likely")).isEqualTo(OLD);
    assertThat(mine.edited("likely", "A\n")).isEqualTo(OLD);
  }

  @Test
  void anEmptyEditLeavesThePieceOutOfTextAndHtml() {
    AnswerDraft mine = OLD.edited("likely", " \n");
    assertThat(mine.text()).isEqualTo("Hello\n\nX\n\nBye\n");
    assertThat(mine.html()).isEqualTo("<p>Hello</p>\n<p>X</p>\n<p>Bye</p>\n");
  }

  @Test
  void anEditIsTextInHtmlWhateverIsInIt() {
    String html = OLD.edited("end", "<script>x</script> & more\nnext\n\nlast").html();
    assertThat(html)
        .doesNotContain("<script")
        .contains("&lt;script&gt;x&lt;/script&gt; &amp; more")
        .contains("<br/><span>next</span>")
        .contains("<p><span>last</span></p>");
  }

  @Test
  void aPieceThatItHasNotCannotBeEdited() {
    assertThatThrownBy(() -> OLD.edited("nothing", "x"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nothing");
  }

  @Test
  void entriesOfAListThatArePiecesStandTogether() {
    AnswerDraft list =
        new AnswerDraft(
            List.of(
                new DraftBlock("a", List.of(DraftLine.paragraph("Take care:"))),
                new DraftBlock("b", List.of(DraftLine.item("one"))),
                new DraftBlock("c", List.of(DraftLine.item("two"))),
                new DraftBlock("d", List.of(DraftLine.paragraph("End")))),
            List.of());
    assertThat(list.text()).isEqualTo("Take care:\n\n- one\n- two\n\nEnd\n");
  }
}
