package limberboard.letters.mail;

/**
 * Something that came with a letter. It is only listed: nothing of it is opened unasked.
 *
 * @param number its number in the letter, from 1, by which it can be asked for
 * @param name its file name as the sender gave it, without folders; made up where there is none
 * @param type its media type in small letters, such as {@code image/jpeg}
 * @param bytes how long it is, decoded
 */
public record Attachment(int number, String name, String type, long bytes) {
  /** Whether it says that it is a picture. */
  public boolean isPicture() {
    return type.startsWith("image/");
  }
}
