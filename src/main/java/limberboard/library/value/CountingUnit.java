package limberboard.library.value;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** What a material's amounts are counted in. */
public enum CountingUnit implements Word {
  /** Millilitres. */
  ML(MetricPrefix.MILLI(Units.LITRE)),
  /** Grams. */
  G(Units.GRAM),
  /** Metres. */
  M(Units.METRE),
  /** Pieces. */
  PIECE(AbstractUnit.ONE);

  private final Unit<?> unit;

  CountingUnit(Unit<?> unit) {
    this.unit = unit;
  }

  /** Whether quantities of this unit can be counted so. */
  public boolean measures(Unit<?> other) {
    return unit.isCompatible(other);
  }
}
