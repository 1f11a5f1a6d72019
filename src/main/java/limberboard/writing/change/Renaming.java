package limberboard.writing.change;

import limberboard.library.page.Kind;

/**
 * A page that gets another id.
 *
 * @param kind its kind
 * @param from its id
 * @param to its new id
 */
public record Renaming(Kind kind, String from, String to) {
  /** The path of the page's file before, relative to the workspace. */
  public String fromPath() {
    return path(from);
  }

  /** The path of the page's file afterwards. */
  public String toPath() {
    return path(to);
  }

  private String path(String id) {
    return "articles/" + kind.folder() + "/" + id + ".md";
  }

  /** The way back. */
  Renaming back() {
    return new Renaming(kind, to, from);
  }
}
