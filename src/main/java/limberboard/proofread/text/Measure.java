package limberboard.proofread.text;

import limberboard.library.value.Word;

/** What a figure measures, and the unit that it is compared in. */
public enum Measure implements Word {
  /** Minutes. */
  TIME,
  /** Millimetres. */
  LENGTH,
  /** Newton; a kilogram that is pulled counts as ten. */
  PULL,
  /** Newton metres. */
  TORQUE,
  /** Milliamperes. */
  CURRENT,
  /** Volts. */
  VOLTAGE,
  /** Bar. */
  PRESSURE,
  /** Degrees Celsius. */
  TEMPERATURE,
  /** Per cent. */
  SHARE,
  /** Grams or millilitres in a litre. */
  DILUTION,
  /** Turns. */
  TURNS
}
