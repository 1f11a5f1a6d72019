package limberboard;

/** Starts the program. */
public final class Limberboard {
  private Limberboard() {}

  /**
   * Starts the program.
   *
   * @param args the words of the command line
   */
  public static void main(String[] args) {}
}
