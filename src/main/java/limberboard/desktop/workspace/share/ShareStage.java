package limberboard.desktop.workspace.share;

/** How far sharing is. */
public enum ShareStage {
  /** It is found out with what the workspace is shared. */
  LOOKING,
  /** The workspace has no history, which is what is shared. */
  NO_HISTORY,
  /** It can be pulled and pushed. */
  READY,
  /** It is being pulled or pushed. */
  RUNNING,
  /** Both copies changed the same parts, and somebody is to choose. */
  SETTLING
}
