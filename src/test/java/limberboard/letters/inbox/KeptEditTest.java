package limberboard.letters.inbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.DraftBlock;
import limberboard.letters.answer.DraftLine;
import org.junit.jupiter.api.Test;

class KeptEditTest {
  private static DraftBlock piece(String id, String text) {
    return new DraftBlock(id, List.of(new DraftLine(DraftLine.Kind.PARAGRAPH, text)));
  }

  private static AnswerDraft draft(DraftBlock... blocks) {
    return new AnswerDraft(List.of(blocks), List.of());
  }

  @Test
  void whatWasEditedIsThereAgainAndTheRestIsWrittenAnew() {
    AnswerDraft before =
        draft(piece("greeting", "Hello,"), piece("likely", "The seal."), piece("closing", "Yours"))
            .edited("likely", "I think it is the seal.");
    AnswerDraft fresh =
        draft(
            piece("greeting", "Dear Ada,"),
            piece("likely", "The seal."),
            piece("closing", "Yours"));
    AnswerDraft again = KeptEdit.in(fresh, KeptEdit.of(before));
    assertThat(again.text()).isEqualTo("Dear Ada,\n\nI think it is the seal.\n\nYours\n");
    assertThat(again.block("likely").orElseThrow().groundsChanged()).isFalse();
  }

  @Test
  void groundsThatChangedMeanwhileAreSaid() {
    AnswerDraft before = draft(piece("likely", "The seal.")).edited("likely", "The seal, I think.");
    AnswerDraft again = KeptEdit.in(draft(piece("likely", "The hatch.")), KeptEdit.of(before));
    assertThat(again.block("likely").orElseThrow().groundsChanged()).isTrue();
    assertThat(again.text()).isEqualTo("The seal, I think.\n");
  }

  @Test
  void anEditedPieceThatWouldNotBeWrittenAnyMoreStaysAtItsPlace() {
    AnswerDraft before =
        draft(piece("greeting", "Hello,"), piece("mend", "Do this."), piece("closing", "Yours"))
            .edited("mend", "Do that.");
    AnswerDraft again =
        KeptEdit.in(
            draft(piece("greeting", "Hello,"), piece("closing", "Yours")), KeptEdit.of(before));
    assertThat(again.blocks())
        .extracting(DraftBlock::id)
        .containsExactly("greeting", "mend", "closing");
  }

  @Test
  void withoutEditsNothingIsKept() {
    AnswerDraft draft = draft(piece("greeting", "Hello,"));
    assertThat(KeptEdit.of(draft)).isEmpty();
    assertThat(KeptEdit.in(draft, List.of())).isEqualTo(draft);
  }
}
