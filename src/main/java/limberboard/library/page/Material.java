package limberboard.library.page;

import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.value.Amount;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.EmptyValues;
import limberboard.library.value.MaterialGroup;
import limberboard.library.value.Named;
import limberboard.library.value.Names;
import limberboard.library.value.Required;

/**
 * Something used up, fitted or (a tool) worked with.
 *
 * @param group its shelf at the chandlery
 * @param unit what amounts are counted in; empty only for tools
 * @param packs pack sizes it is sold in
 * @param shelfLife how long it keeps unopened
 * @param openedLife how long it keeps once opened
 * @param keepOff what it must not touch
 * @param instead ids of materials that may be used instead
 * @param cautions shown wherever it is used
 * @param workings sums shown with it
 * @param mixing what decides with what it may be mixed or brought together
 * @param bought {@code false} for what is not bought, such as water from the tap; absent: it is
 * @param rope which rope it is, for cordage
 * @param figures what other pages quote of it, by name
 */
public record Material(
    @Required MaterialGroup group,
    Optional<CountingUnit> unit,
    List<Pack> packs,
    Optional<Period> shelfLife,
    Optional<Period> openedLife,
    List<KeepOff> keepOff,
    @Names(Named.MATERIAL) List<String> instead,
    List<CautionUse> cautions,
    List<SumUse> workings,
    Mixing mixing,
    Optional<Boolean> bought,
    Optional<RopeKind> rope,
    Map<String, PageFigure> figures)
    implements Details {

  /** Absent entries become empty ones. */
  public Material {
    unit = EmptyValues.optional(unit);
    packs = EmptyValues.list(packs);
    shelfLife = EmptyValues.optional(shelfLife);
    openedLife = EmptyValues.optional(openedLife);
    keepOff = EmptyValues.list(keepOff);
    instead = EmptyValues.list(instead);
    cautions = EmptyValues.list(cautions);
    workings = EmptyValues.list(workings);
    mixing = mixing == null ? Mixing.NOTHING : mixing;
    bought = EmptyValues.optional(bought);
    rope = EmptyValues.optional(rope);
    figures = EmptyValues.map(figures);
  }

  @Override
  public Kind kind() {
    return Kind.MATERIAL;
  }

  /** Whether it is worked with rather than used up. */
  public boolean isTool() {
    return group == MaterialGroup.TOOL;
  }

  /** Whether it has to be bought, and is not drawn from the tap. */
  public boolean isBought() {
    return bought.orElse(true);
  }

  /**
   * Whether its pieces must be whole: rope, hose, cable and gaskets are cut from one length, tape
   * and bedding strip may be pieced together.
   */
  public boolean isCutInPieces() {
    return unit.equals(Optional.of(CountingUnit.M)) && group.isCutInPieces();
  }

  /**
   * A pack it is sold in.
   *
   * @param name what the pack is called: cartridge, can, reel
   * @param holds how much is in it, in the material's unit
   * @param cutToLength whether any number of these is had in one length, as rope by the metre
   */
  public record Pack(@Required String name, @Required Amount.Fixed holds, boolean cutToLength) {
    /**
     * Checks what it holds.
     *
     * @throws IllegalArgumentException when that is nothing, with a message that says what to write
     */
    public Pack {
      if (holds != null && !(holds.quantity().getValue().doubleValue() > 0)) {
        throw new IllegalArgumentException("a pack holds more than nothing; write what is in it");
      }
    }

    /** A pack as it stands. */
    public Pack(String name, Amount.Fixed holds) {
      this(name, holds, false);
    }
  }

  /**
   * Something the material must not touch.
   *
   * @param what the other thing
   * @param why what would happen
   */
  public record KeepOff(@Required String what, @Required String why) {}
}
