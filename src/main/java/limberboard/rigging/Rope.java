package limberboard.rigging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.page.Material;
import limberboard.library.page.Page;
import limberboard.library.value.RopeConstruction;
import limberboard.library.value.RopeEnd;
import limberboard.library.value.RopeGroup;

/**
 * One rope of a boat, or several alike.
 *
 * @param id its id on the model's page
 * @param title what it is called
 * @param purpose where it runs and what it does, or empty
 * @param group the part of the list it stands in
 * @param count pieces, 1 or more
 * @param construction how it is made
 * @param length of one piece
 * @param pull what pulls on it
 * @param thickness its diameter
 * @param ends how its ends are finished
 * @param material the page of this rope, where there is one
 */
public record Rope(
    String id,
    String title,
    String purpose,
    RopeGroup group,
    int count,
    RopeConstruction construction,
    RopeLength length,
    Pull pull,
    Thickness thickness,
    List<RopeEnd> ends,
    Optional<Page<Material>> material) {

  /** Copies the list. */
  public Rope {
    ends = List.copyOf(ends);
  }

  /** How its ends are finished; a whipped end goes without saying beside another. */
  public String endWords() {
    List<String> worked =
        ends.stream()
            .filter(end -> end != RopeEnd.WHIPPING)
            .map(RopeEnd::spoken)
            .distinct()
            .toList();
    return worked.isEmpty() ? RopeEnd.WHIPPING.spoken() : String.join(", ", worked);
  }

  /** Whether both length and diameter are known. */
  public boolean isReckoned() {
    return length instanceof RopeLength.Cut && thickness instanceof Thickness.Chosen;
  }

  /** Whether its length or its diameter follows from anything but what the page states. */
  public boolean dependsOnTheRig() {
    return !length.isStated() || !(pull instanceof Pull.NotReckoned);
  }

  /** Names of the dimensions that the model's page does not give as a length. */
  public List<String> missing() {
    Stream<String> ofLength =
        length instanceof RopeLength.Open open ? open.missing().stream() : Stream.empty();
    Stream<String> ofPull =
        pull instanceof Pull.Open open ? open.missing().stream() : Stream.empty();
    return Stream.concat(ofLength, ofPull).distinct().toList();
  }

  /** What is open about it: nothing, or one sentence for length and one for diameter. */
  public List<String> open() {
    List<String> open = new ArrayList<>();
    if (length instanceof RopeLength.Open unknown) {
      open.add(unknown.why());
    }
    if (thickness instanceof Thickness.Open unknown) {
      open.add(unknown.why());
    }
    return open.stream().distinct().toList();
  }
}
