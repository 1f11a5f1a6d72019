package limberboard.library.value;

/** What a text in a header may be the name of. */
public enum Named {
  /** A model's page. */
  MODEL("models"),
  /** A procedure's page. */
  PROCEDURE("procedures"),
  /** The page of a material or tool. */
  MATERIAL("materials"),
  /** The page of a tool. */
  TOOL("materials"),
  /** A caution's page. */
  CAUTION("cautions"),
  /** A symptom's page. */
  SYMPTOM("symptoms"),
  /** A procedure's page, or an event of the log. */
  LOG_WORD("procedures"),
  /** A zone of a model. */
  ZONE(""),
  /** An access of a model. */
  ACCESS(""),
  /** A choice of a model's equipment. */
  CHOICE(""),
  /** A measure of a model. */
  MEASURE(""),
  /** A rope of a model. */
  ROPE(""),
  /** A sum. */
  SUM(""),
  /** A picture, by its path from the page. */
  PICTURE("");

  private final String folder;

  Named(String folder) {
    this.folder = folder;
  }

  /** Whether it is the id of a page. */
  public boolean isPage() {
    return !folder.isEmpty();
  }

  /** The folder of the pages that it may be the id of; empty when it is no page's. */
  public String folder() {
    return folder;
  }
}
