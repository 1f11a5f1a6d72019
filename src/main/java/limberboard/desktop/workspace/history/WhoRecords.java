package limberboard.desktop.workspace.history;

import java.util.Optional;
import limberboard.desktop.base.Memory;
import limberboard.history.Author;

/**
 * Who records a version: as Git's settings say, or as somebody said in the window, which is
 * remembered. For the event thread only.
 */
public final class WhoRecords {
  private static final String KEY = "recorder";
  private final Memory memory;
  private Question question = proposed -> Optional.empty();

  /** Asks for a name. */
  @FunctionalInterface
  public interface Question {
    /**
     * Asks.
     *
     * @param proposed who it may be
     * @return empty when nobody is named
     */
    Optional<Author> ask(Optional<Author> proposed);
  }

  /** Remembers here who records. */
  public WhoRecords(Memory memory) {
    this.memory = memory;
  }

  /** Says who is asked where nothing is known. */
  public void askedBy(Question asked) {
    question = asked;
  }

  /** Who records by what is known without asking. */
  public Optional<Author> known(Optional<Author> settings) {
    return settings.or(() -> memory.text(KEY).flatMap(Author::read));
  }

  /**
   * Who records; asked where it is not known.
   *
   * @param settings who it is by Git's settings
   * @return empty when nobody is named, and nothing is to be recorded
   */
  public Optional<Author> of(Optional<Author> settings) {
    Optional<Author> author = known(settings);
    if (author.isPresent()) {
      return author;
    }
    Optional<Author> said = question.ask(Optional.empty());
    said.ifPresent(who -> memory.remember(KEY, who.name() + " <" + who.mail() + ">"));
    return said;
  }
}
