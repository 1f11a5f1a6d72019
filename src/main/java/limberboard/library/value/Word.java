package limberboard.library.value;

import java.util.Locale;

/**
 * A closed set of words of the file formats: {@code RUNNING_RIGGING} is written {@code
 * running-rigging}.
 */
public interface Word {
  /** The constant's name. */
  String name();

  /** The word as it stands in files and on screen's facts: lower case with hyphens. */
  default String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The word as a person reads it: lower case with spaces. */
  default String spoken() {
    return word().replace('-', ' ');
  }
}
