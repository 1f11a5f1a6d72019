package limberboard.desktop.workspace.share;

import java.util.Optional;
import java.util.function.BiFunction;
import limberboard.desktop.workspace.history.HistoryOutside;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.HowFar;

/**
 * What sharing touches.
 *
 * @param history what it has in common with the history
 * @param connections makes a connection from who is asked for passwords and who is told how far it
 *     is
 * @param passwords is asked for names and passwords, on the thread that shares
 * @param address is asked with what to share, on the event thread
 */
public record ShareOutside(
    HistoryOutside history,
    BiFunction<Asking, HowFar, Connection> connections,
    Asking passwords,
    AddressQuestion address) {

  /** Asks with what the workspace is to be shared. */
  @FunctionalInterface
  public interface AddressQuestion {
    /** The address; empty when none is given. */
    Optional<String> ask();
  }
}
