package limberboard.desktop.base;

import java.util.List;
import java.util.Optional;
import limberboard.library.file.FailureLog;
import limberboard.library.file.LastNet;

/** Messages to the person in front of the window, one at a time. For the event thread only. */
public final class Notices extends Observed {
  private final LastNet net;
  private Optional<Notice> current = Optional.empty();

  /**
   * A message.
   *
   * @param text what happened and what can be done
   * @param failure whether something went wrong
   * @param offers what can be done about it at once
   */
  public record Notice(String text, boolean failure, List<Offer> offers) {
    /** Copies the list. */
    public Notice {
      offers = List.copyOf(offers);
    }

    /** A message without offers. */
    public Notice(String text, boolean failure) {
      this(text, failure, List.of());
    }
  }

  /**
   * Something that can be done at once.
   *
   * @param title what a person reads on its button
   * @param action what is done
   */
  public record Offer(String title, Runnable action) {}

  /**
   * Messages of a window.
   *
   * @param net words failures and writes their details down
   */
  public Notices(LastNet net) {
    this.net = net;
  }

  /** The same without a place for the details of failures. */
  public Notices() {
    this(new LastNet(FailureLog.nowhere()));
  }

  /** The message to be shown now. */
  public Optional<Notice> current() {
    return current;
  }

  /** Tells that something has been done, and offers what can be done next. */
  public void tell(String text, Offer... offers) {
    set(Optional.of(new Notice(text, false, List.of(offers))));
  }

  /** Tells that something is wrong, in a whole sentence that says what to do. */
  public void warn(String text) {
    set(Optional.of(new Notice(text, true)));
  }

  /** Tells that something went wrong. */
  public void failure(String doing, Throwable cause) {
    String line = net.line(doing, cause);
    boolean saving = doing.startsWith("Saving ") || doing.startsWith("Writing ");
    String words = saving ? line.replaceFirst("^.*? did not work: ", "Not saved: ") : line;
    set(Optional.of(new Notice(words, true)));
  }

  /** Takes the message away if whoever went on has nothing to do about it. */
  public void seen() {
    if (current.filter(notice -> notice.failure() || !notice.offers().isEmpty()).isEmpty()) {
      dismiss();
    }
  }

  /** Takes the message away. */
  public void dismiss() {
    set(Optional.empty());
  }

  private void set(Optional<Notice> notice) {
    current = notice;
    tell();
  }
}
