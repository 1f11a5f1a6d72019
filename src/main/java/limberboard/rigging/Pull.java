package limberboard.rigging;

import java.util.List;

/** What pulls on a rope. */
public sealed interface Pull {

  /**
   * It is known.
   *
   * @param newtons the load on one part of the rope
   * @param source what pulls as a whole, with its sum: a sail in a wind, or a stated force
   * @param working from the source to one part of the rope
   */
  record Reckoned(double newtons, String source, String working) implements Pull {}

  /** The page states a diameter and no load. */
  record NotReckoned() implements Pull {}

  /**
   * Something is missing.
   *
   * @param missing names of the dimensions that the model's page does not give as a length
   * @param why a sentence for the owner
   */
  record Open(List<String> missing, String why) implements Pull {
    /** Copies the list. */
    public Open {
      missing = List.copyOf(missing);
    }
  }
}
