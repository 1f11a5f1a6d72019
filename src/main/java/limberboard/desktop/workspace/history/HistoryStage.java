package limberboard.desktop.workspace.history;

/** How far the history of a page is. */
public enum HistoryStage {
  /** No page is asked about. */
  NONE,
  /** It is being read. */
  READING,
  /** The workspace has no history. */
  NO_HISTORY,
  /** It is read. */
  READ,
  /** It cannot be read. */
  TROUBLE
}
