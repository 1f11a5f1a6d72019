package limberboard.sharing;

import java.util.Optional;

/** Asks the person who shares for a name and a password. They are used once and kept nowhere. */
public interface Asking {

  /**
   * What was answered.
   *
   * @param name the user's name
   * @param secret the password or token
   */
  record Answer(String name, char[] secret) {}

  /**
   * Asks.
   *
   * @param where the remote's host
   * @param again whether what was answered before was refused
   * @return empty when the person gives none
   */
  Optional<Answer> ask(String where, boolean again);

  /** Nobody is there to be asked. */
  static Asking nobody() {
    return (where, again) -> Optional.empty();
  }
}
