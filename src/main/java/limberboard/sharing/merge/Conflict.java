package limberboard.sharing.merge;

/**
 * A part of a file that two people changed differently.
 *
 * @param file the file
 * @param part names the part within the file: a key of the header, {@code body-1} and so on, {@code
 *     page} for the whole, {@code name} for its name
 * @param heading the heading above a part of the body, or empty
 * @param before what stood there before; empty for nothing
 * @param ours what this copy has; empty for nothing
 * @param theirs what the other has; empty for nothing
 */
public record Conflict(
    String file, String part, String heading, String before, String ours, String theirs) {
  /** The whole of a file. */
  public static final String PAGE = "page";

  /** A file's name. */
  public static final String NAME = "name";

  /** The text that a choice gives this part. */
  public String text(Choice choice) {
    return switch (choice) {
      case OURS -> ours;
      case THEIRS -> theirs;
      case BEFORE -> before;
      case BOTH -> ours + (ours.isEmpty() || ours.endsWith("\n") ? "" : "\n") + theirs;
    };
  }

  /** Whether both may be taken: two paragraphs, never a key twice. */
  public boolean mayBeBoth() {
    return part.startsWith("body-");
  }
}
