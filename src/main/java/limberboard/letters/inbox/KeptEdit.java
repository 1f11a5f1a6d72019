package limberboard.letters.inbox;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.DraftBlock;
import limberboard.letters.answer.DraftLine;

/**
 * A piece of a draft that a person has edited, kept until the letter is opened again.
 *
 * @param piece the id of the piece
 * @param after the id of the piece before it; empty for the first
 * @param text what the person wrote; empty leaves the piece out
 * @param written what the program had written when it was edited
 */
public record KeptEdit(String piece, String after, String text, List<DraftLine> written) {
  /** Copies the list. */
  public KeptEdit {
    written = List.copyOf(written);
  }

  /** The edited pieces of a draft. */
  public static List<KeptEdit> of(AnswerDraft draft) {
    List<KeptEdit> kept = new ArrayList<>();
    String before = "";
    for (DraftBlock block : draft.blocks()) {
      Optional<DraftBlock.Edit> edit = block.edit();
      if (edit.isPresent()) {
        kept.add(new KeptEdit(block.id(), before, edit.get().text(), edit.get().grounds()));
      }
      before = block.id();
    }
    return kept;
  }

  /** A draft as the program writes it, with what was edited before in its place. */
  public static AnswerDraft in(AnswerDraft fresh, List<KeptEdit> kept) {
    List<DraftBlock> blocks = new ArrayList<>();
    for (KeptEdit edit : kept) {
      if (blocks.stream().noneMatch(block -> block.id().equals(edit.after()))) {
        blocks.add(new DraftBlock(edit.after(), List.of()));
      }
      blocks.add(
          new DraftBlock(
              edit.piece(),
              edit.written(),
              Optional.of(new DraftBlock.Edit(edit.text(), edit.written()))));
    }
    return new AnswerDraft(blocks, List.of()).redrafted(fresh);
  }
}
