package limberboard.library.value;

/** Whether a cure shows. */
public enum Seen implements Word {
  /** One sees straight away that it is cured. */
  AT_ONCE,
  /** It shows only after a while. */
  LATER
}
