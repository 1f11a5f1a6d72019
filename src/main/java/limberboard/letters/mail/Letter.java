package limberboard.letters.mail;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A letter as it was read: what its writer said now, set apart from what is quoted, sent on, signed
 * or added by programs. Immutable; it holds text only, nothing that could run or load.
 *
 * @param head what its header says
 * @param passages its text in order
 * @param attachments what came with it
 * @param remarks what was wrong with it or left out, in sentences
 */
public record Letter(
    LetterHead head, List<Passage> passages, List<Attachment> attachments, List<String> remarks) {
  /** Copies the lists. */
  public Letter {
    passages = List.copyOf(passages);
    attachments = List.copyOf(attachments);
    remarks = List.copyOf(remarks);
  }

  /** What was written for this letter, without what is quoted, signed or added. */
  public String own() {
    return of(Passage.Kind.OWN);
  }

  /** All text of a kind, in order, with a blank line between; empty where there is none. */
  public String of(Passage.Kind kind) {
    return passages.stream()
        .filter(passage -> passage.kind() == kind)
        .map(Passage::text)
        .collect(Collectors.joining("\n\n"));
  }

  /** Whether nothing was written: neither a subject nor a word of one's own. */
  public boolean isEmpty() {
    return head.subject().isBlank() && own().isBlank();
  }
}
