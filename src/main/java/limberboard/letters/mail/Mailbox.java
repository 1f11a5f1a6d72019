package limberboard.letters.mail;

/**
 * Somebody's address.
 *
 * @param name the name shown, or empty
 * @param address such as {@code a@example.org}, or empty where it could not be read
 */
public record Mailbox(String name, String address) {
  /** The name, or the address where no name is given. */
  public String shown() {
    return name.isEmpty() ? address : name;
  }
}
