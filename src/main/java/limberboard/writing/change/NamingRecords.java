package limberboard.writing.change;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.Named;
import limberboard.library.value.Names;

/** Where files that are read key by key name pages: letters' answers and states, and drills. */
final class NamingRecords {
  private NamingRecords() {}

  /**
   * What is beside a letter.
   *
   * @param model the boat's model
   * @param symptoms the symptoms that it tells of
   * @param answers by symptom
   * @param pieces edited pieces of the draft
   */
  record OfLetter(
      @Names(Named.MODEL) Optional<String> model,
      @Names(Named.SYMPTOM) List<String> symptoms,
      @Names(value = Named.SYMPTOM, keys = true) Map<String, String> answers,
      List<OfPiece> pieces) {}

  /**
   * A piece of a draft: a symptom's id, a stroke and the piece's own name.
   *
   * @param piece which
   * @param after after which
   */
  record OfPiece(@Names(Named.SYMPTOM) String piece, @Names(Named.SYMPTOM) String after) {}

  /**
   * A drill, a course, or what a student has drilled.
   *
   * @param symptom of a drill
   * @param drills of a course or student
   */
  record OfDrills(@Names(Named.SYMPTOM) Optional<String> symptom, List<OfDrills> drills) {}
}
