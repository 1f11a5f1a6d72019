package limberboard.desktop.workspace.history;

/** How a version is looked at. */
public enum VersionLook {
  /** What it changed. */
  CHANGED("What it changed"),
  /** What has changed since. */
  SINCE("What changed since"),
  /** The page as it stood. */
  THEN("As it stood");

  private final String title;

  VersionLook(String title) {
    this.title = title;
  }

  /** What a person reads. */
  String title() {
    return title;
  }
}
