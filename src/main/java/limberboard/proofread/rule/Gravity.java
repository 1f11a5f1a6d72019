package limberboard.proofread.rule;

import java.util.Locale;

/** How grave a finding is. */
public enum Gravity {
  /** Somebody may be hurt, or something that carries people may fail. */
  HURTS("can hurt"),
  /** The work goes wrong, or stops half-way for want of something. */
  MISLEADS("misleads"),
  /** The reader stumbles. */
  STUMBLES("reads badly");

  private final String words;

  Gravity(String words) {
    this.words = words;
  }

  /** The word of scripts: {@code hurts}, {@code misleads}, {@code stumbles}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What a person sees. */
  public String words() {
    return words;
  }
}
