package limberboard.desktop.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Messages to the person in front of the window, one at a time. For the event thread only. */
public final class Notices {
  private final List<Runnable> listeners = new ArrayList<>();
  private Optional<Notice> current = Optional.empty();

  /**
   * A message.
   *
   * @param text what happened and what can be done
   * @param failure whether something went wrong
   */
  public record Notice(String text, boolean failure) {}

  /** Calls the listener after each change. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** The message to be shown now. */
  public Optional<Notice> current() {
    return current;
  }

  /** Tells that something has been done. */
  public void tell(String text) {
    set(Optional.of(new Notice(text, false)));
  }

  /** Tells that something is wrong, in a whole sentence that says what to do. */
  public void warn(String text) {
    set(Optional.of(new Notice(text, true)));
  }

  /** Tells that something went wrong. */
  public void failure(String doing, Throwable cause) {
    String why = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    set(Optional.of(new Notice(doing + " did not work: " + why, true)));
  }

  /** Takes the message away. */
  public void dismiss() {
    set(Optional.empty());
  }

  private void set(Optional<Notice> notice) {
    current = notice;
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
