package limberboard.fuzz;

import java.util.Map;

/**
 * Files made by hand to hold the program up.
 *
 * @param name what they attack by
 * @param files file to text
 */
record Attack(String name, Map<String, String> files) {
  @Override
  public String toString() {
    return name;
  }
}
