package limberboard.library.page;

import java.util.Locale;

/** What a page is about; each kind has its own folder and its own header keys. */
public enum Kind {
  /** What an owner notices, with the causes and checks behind it. */
  SYMPTOM("symptoms"),
  /** How one job is done. */
  PROCEDURE("procedures"),
  /** Something used up, fitted or worked with. */
  MATERIAL("materials"),
  /** One boat model. */
  MODEL("models"),
  /** One danger and what to do about it. */
  CAUTION("cautions"),
  /** Background reading. */
  TOPIC("topics"),
  /** What answers to letters say at one place. */
  WORDING("wordings"),
  /** Drills in order, with what is taught at each. */
  COURSE("courses");

  private final String folder;

  Kind(String folder) {
    this.folder = folder;
  }

  /** The folder of this kind below {@code articles/}. */
  public String folder() {
    return folder;
  }

  /** The word a person sees, in lower case. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
