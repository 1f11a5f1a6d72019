package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * An answer that a person edits and sends. Immutable: an edit makes a new draft. It begins with
 * what cannot wait.
 *
 * @param blocks its pieces in order, each with its own id
 * @param questions the checks that it asks for, by the number that it gives them, from 1
 * @param pages ids of the pages that it goes by, to send with it: of each fault its mend where that
 *     is what to do, otherwise the symptom
 */
public record AnswerDraft(List<DraftBlock> blocks, List<AskedCheck> questions, List<String> pages) {
  /** Copies the lists. */
  public AnswerDraft {
    blocks = List.copyOf(blocks);
    questions = List.copyOf(questions);
    pages = List.copyOf(pages);
  }

  /** A draft that goes by no page. */
  public AnswerDraft(List<DraftBlock> blocks, List<AskedCheck> questions) {
    this(blocks, questions, List.of());
  }

  /** Whether nothing is to be answered. */
  public boolean isEmpty() {
    return blocks.isEmpty();
  }

  /** The piece with this id. */
  public Optional<DraftBlock> block(String id) {
    return blocks.stream().filter(block -> block.id().equals(id)).findFirst();
  }

  /**
   * The same with a person's text in place of a piece; empty text leaves the piece out.
   *
   * @throws IllegalArgumentException when it has no such piece
   */
  public AnswerDraft edited(String id, String text) {
    return with(id, block -> block.edited(text));
  }

  /**
   * The same with a piece as the program writes it.
   *
   * @throws IllegalArgumentException when it has no such piece
   */
  public AnswerDraft asWritten(String id) {
    return with(id, DraftBlock::asWritten);
  }

  private AnswerDraft with(String id, UnaryOperator<DraftBlock> change) {
    if (block(id).isEmpty()) {
      throw new IllegalArgumentException("the draft has no piece " + id);
    }
    return new AnswerDraft(
        blocks.stream().map(block -> block.id().equals(id) ? change.apply(block) : block).toList(),
        questions,
        pages);
  }

  /**
   * This draft as it is written after something has changed: what nobody has touched is written
   * anew, and what a person has edited stays as it is. An edited piece that would not be written
   * any more stays too, at its place, and its {@linkplain DraftBlock#groundsChanged() grounds
   * changed}.
   *
   * @param fresh the draft as the program writes it now
   */
  public AnswerDraft redrafted(AnswerDraft fresh) {
    Map<String, DraftBlock> edited = new LinkedHashMap<>();
    blocks.stream().filter(DraftBlock::isEdited).forEach(block -> edited.put(block.id(), block));
    List<DraftBlock> now = new ArrayList<>();
    for (DraftBlock block : fresh.blocks()) {
      DraftBlock mine = edited.remove(block.id());
      now.add(mine == null ? block : mine.writtenAs(block.written()));
    }
    edited.values().forEach(left -> now.add(placeOf(left, now), left.writtenAs(List.of())));
    return new AnswerDraft(now, fresh.questions(), fresh.pages());
  }

  /** Behind the nearest piece before it that is still there. */
  private int placeOf(DraftBlock left, List<DraftBlock> now) {
    List<String> ids = now.stream().map(DraftBlock::id).toList();
    List<String> mine = blocks.stream().map(DraftBlock::id).toList();
    for (int i = mine.indexOf(left.id()) - 1; i >= 0; i--) {
      int place = ids.indexOf(mine.get(i));
      if (place >= 0) {
        return place + 1;
      }
    }
    return 0;
  }

  /** As plain text; a paragraph is one line. */
  public String text() {
    StringBuilder all = new StringBuilder();
    boolean listed = false;
    for (DraftBlock block : blocks) {
      String text = block.text();
      if (!text.isBlank()) {
        all.append(all.isEmpty() || listed && block.isList() ? "" : "\n").append(text);
        listed = block.isList();
      }
    }
    return all.toString();
  }

  /** As a piece of HTML, without anything that is loaded from elsewhere. */
  public String html() {
    return blocks.stream().map(DraftText::html).collect(Collectors.joining());
  }

  /**
   * A check that a draft asks for.
   *
   * @param symptom whose check it is
   * @param check its id
   * @param answers its answers, as in the file
   */
  public record AskedCheck(String symptom, String check, List<String> answers) {
    /** Copies the list. */
    public AskedCheck {
      answers = List.copyOf(answers);
    }
  }
}
