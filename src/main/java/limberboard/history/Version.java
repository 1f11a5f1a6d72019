package limberboard.history;

import java.time.ZonedDateTime;

/**
 * A page as somebody recorded it.
 *
 * @param id names the version; the first {@value #SHORT} letters will do
 * @param who the author's name
 * @param mail the author's address, or empty
 * @param when when it was recorded, in the author's own time zone
 * @param said what the author said about it, one line
 * @param path the page's file at that time, relative to the workspace
 * @param isThere whether the page was there after it; a version may take it away
 */
public record Version(
    String id,
    String who,
    String mail,
    ZonedDateTime when,
    String said,
    String path,
    boolean isThere) {
  private static final int SHORT = 10;

  /** The id as people write it. */
  public String shortId() {
    return id.substring(0, Math.min(SHORT, id.length()));
  }
}
