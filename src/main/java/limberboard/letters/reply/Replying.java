package limberboard.letters.reply;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.Drafter;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Teaching;

/**
 * Says what there is to answer to a letter: what it tells of, what the earlier letters of its
 * conversation told, and how far tracing comes with that. Immutable; any thread, best not the event
 * thread.
 */
public final class Replying {
  private final Teaching teaching;
  private final Conversations conversations;
  private final Drafter drafter;
  private final Answerable answerable;

  /**
   * For the letters of a workspace.
   *
   * @param conversations those that its letters belong to
   */
  public Replying(Teaching teaching, Workspace workspace, Conversations conversations) {
    this.teaching = teaching;
    this.conversations = conversations;
    this.drafter = new Drafter(workspace.library());
    this.answerable = new Answerable(workspace, drafter);
  }

  /** What there is to answer to a letter, going on from the earlier letters of its conversation. */
  public Reply to(Letter letter) {
    List<KeptLetter> earlier = conversations.before(letter);
    ConversationSoFar soFar = new ConversationSoFar(teaching, answerable);
    earlier.forEach(soFar::earlier);
    return soFar.reply(letter);
  }

  /** The draft of the answer; empty where nothing is to be answered. */
  public Optional<AnswerDraft> draft(Reply reply) {
    return Optional.of(drafter.draft(reply.toAnswer())).filter(draft -> !draft.isEmpty());
  }
}
