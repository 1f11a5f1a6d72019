package limberboard.upkeep.start;

import java.time.LocalDate;
import limberboard.boat.HowKnown;

/** What a person says about work that is not in the log. */
public sealed interface StartAnswer {

  /**
   * It was done.
   *
   * @param day when; the first day of the month or year where no more is known
   * @param how how that is known
   */
  record Known(LocalDate day, HowKnown how) implements StartAnswer {}

  /** Nobody knows: it is looked at first. */
  record NotKnown() implements StartAnswer {}

  /** There is no such thing on the boat: what is fitted has to be put right. */
  record NotAboard() implements StartAnswer {}

  /** Nobody knows. */
  StartAnswer NOT_KNOWN = new NotKnown();

  /** There is no such thing. */
  StartAnswer NOT_ABOARD = new NotAboard();
}
