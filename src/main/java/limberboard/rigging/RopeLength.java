package limberboard.rigging;

import java.util.List;

/** The length of one piece of rope. */
public sealed interface RopeLength {
  /** The sum, or as much of it as is known. */
  String working();

  /** Whether it is stated as it stands, without a dimension of the boat. */
  boolean isStated();

  /**
   * It is known.
   *
   * @param metres what the sum comes to
   * @param cut rounded up to the step in which it is cut, in metres
   * @param isStated whether no dimension of the boat is in it
   * @param working the sum written out
   */
  record Cut(double metres, double cut, boolean isStated, String working) implements RopeLength {}

  /**
   * Something is missing.
   *
   * @param missing names of the dimensions that the model's page does not give as a length
   * @param why a sentence for the owner
   * @param working the sum with what is missing named in it
   */
  record Open(List<String> missing, String why, String working) implements RopeLength {
    /** Copies the list. */
    public Open {
      missing = List.copyOf(missing);
    }

    @Override
    public boolean isStated() {
      return false;
    }
  }
}
