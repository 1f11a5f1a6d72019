package limberboard.library.page;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.Condition;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * A material that a procedure uses, and how much of it. At most one of {@code amount}, {@code
 * bead}, {@code coat}, {@code cord} and {@code pieces} is given.
 *
 * @param use material id
 * @param fits which boats need it
 * @param purpose what it is for (key {@code for}), or empty
 * @param amount a plain amount
 * @param bead a bead of sealant: length × width × depth
 * @param coat a film: area × thickness
 * @param cord cordage: length × count
 * @param pieces a number of pieces
 * @param ropes ids of the ropes of the boats' lists that it makes anew, so that a rope chosen there
 *     is not bought a second time for this work
 */
public record MaterialUse(
    @Required @Names(Named.MATERIAL) String use,
    Condition fits,
    @JsonProperty("for") String purpose,
    Optional<Amount> amount,
    Optional<Bead> bead,
    Optional<Coat> coat,
    Optional<Cord> cord,
    Optional<Amount> pieces,
    @Names(Named.ROPE) List<String> ropes) {

  /** Absent entries become empty ones. */
  public MaterialUse {
    fits = EmptyValues.condition(fits);
    purpose = EmptyValues.text(purpose);
    amount = EmptyValues.optional(amount);
    bead = EmptyValues.optional(bead);
    coat = EmptyValues.optional(coat);
    cord = EmptyValues.optional(cord);
    pieces = EmptyValues.optional(pieces);
    ropes = EmptyValues.list(ropes);
  }

  /**
   * A bead of sealant.
   *
   * @param length along the joint, a length
   * @param width across the joint, a length
   * @param depth of the joint, a length
   */
  public record Bead(@Required Amount length, @Required Amount width, @Required Amount depth) {}

  /**
   * A film.
   *
   * @param area covered, an area
   * @param thickness wet, a length
   */
  public record Coat(@Required Amount area, @Required Amount thickness) {}

  /**
   * Pieces of cordage, hose or cable.
   *
   * @param length of one piece, a length
   * @param count number of pieces; one when absent
   */
  public record Cord(@Required Amount length, Optional<Amount> count) {
    /** An absent count is one piece. */
    public Cord {
      count = EmptyValues.optional(count);
    }
  }
}
