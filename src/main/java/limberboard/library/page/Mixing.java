package limberboard.library.page;

import java.util.List;
import java.util.Optional;
import limberboard.library.value.AnodeAlloy;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.Required;
import limberboard.library.value.SealantFamily;
import limberboard.library.value.Substance;

/**
 * What decides with what a material may be mixed or brought together.
 *
 * @param family the family of a sealant
 * @param attacks what it spoils
 * @param touches what it lies against when it is used as it is meant
 * @param alloy the alloy of an anode
 * @param metal the metal it is made of or holds
 * @param insulates whether it keeps two metals apart
 * @param oil what an oil or coolant is for, such as {@code hydraulic}, or empty
 * @param grade its grade, such as {@code ISO VG 46}, or empty
 * @param charges which batteries a charger can be set to
 */
public record Mixing(
    Optional<SealantFamily> family,
    List<Attack> attacks,
    List<Substance> touches,
    Optional<AnodeAlloy> alloy,
    Optional<Substance> metal,
    boolean insulates,
    String oil,
    String grade,
    List<Substance> charges) {

  /** Says nothing. */
  public static final Mixing NOTHING =
      new Mixing(null, null, null, null, null, false, null, null, null);

  /** Absent entries become empty ones. */
  public Mixing {
    family = EmptyValues.optional(family);
    attacks = EmptyValues.list(attacks);
    touches = EmptyValues.list(touches);
    alloy = EmptyValues.optional(alloy);
    metal = EmptyValues.optional(metal);
    oil = EmptyValues.text(oil);
    grade = EmptyValues.text(grade);
    charges = EmptyValues.list(charges);
  }

  /**
   * Something that a material spoils.
   *
   * @param what what is spoilt
   * @param why what happens to it
   */
  public record Attack(@Required Substance what, @Required String why) {}

  /** What happens to a substance that this material touches; empty when nothing does. */
  public Optional<Attack> attackOn(Substance substance) {
    return attacks.stream().filter(attack -> attack.what() == substance).findFirst();
  }
}
