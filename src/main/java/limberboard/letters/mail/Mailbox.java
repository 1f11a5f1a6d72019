package limberboard.letters.mail;

/**
 * Somebody's address.
 *
 * @param name the name shown, or empty
 * @param address such as {@code a@example.org}, or empty where it could not be read
 */
public record Mailbox(String name, String address) {
  /** From whom a letter is when nobody says so: an address that leads nowhere (RFC 2606). */
  public static final String NOWHERE = "yard@example.invalid";

  /** The name, or the address where no name is given. */
  public String shown() {
    return name.isEmpty() ? address : name;
  }
}
