package limberboard.library.page;

import java.util.Locale;

/** What a page is about; each kind has its own folder and its own header keys. */
public enum Kind {
  /** What an owner notices, with the causes and checks behind it. */
  SYMPTOM("symptoms", Symptom.class),
  /** How one job is done. */
  PROCEDURE("procedures", Procedure.class),
  /** Something used up, fitted or worked with. */
  MATERIAL("materials", Material.class),
  /** One boat model. */
  MODEL("models", Model.class),
  /** One danger and what to do about it. */
  CAUTION("cautions", Caution.class),
  /** Background reading. */
  TOPIC("topics", Topic.class),
  /** What answers to letters say at one place. */
  WORDING("wordings", Wording.class),
  /** Drills in order, with what is taught at each. */
  COURSE("courses", Course.class);

  private final String folder;
  private final Class<? extends Details> details;

  Kind(String folder, Class<? extends Details> details) {
    this.folder = folder;
    this.details = details;
  }

  /** The record of what this kind adds to a header: one component for each key. */
  public Class<? extends Details> details() {
    return details;
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
