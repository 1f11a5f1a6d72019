package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.AMPERE_HOURS;
import static limberboard.library.value.KnownUnit.HOURS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Peukert's law. */
class BatteryTimeTest {
  private final Sum sum = new BatteryTime();

  /** The usual example (from memory): 100 Ah at 20 h, exponent 1.2, 10 A: 8.7 h. */
  @Test
  void followsAWorkedExample() {
    Asked asked = Asked.of(sum, "load=10 A", "peukert=1.2", "usable=100 %", "temperature=25 °C");
    assertThat(asked.in(HOURS, "time")).isCloseTo(8.7, within(0.01));
  }

  /**
   * A published table of an open explanation: 5 A for 20 h, but 10 A for only about 7.5 h
   * (flooded).
   */
  @Test
  void liesWithinThePublishedRangeOfFloodedBatteries() {
    String[] rest = {"load=10 A", "usable=100 %", "temperature=25 °C"};
    double least = time("peukert=1.6", rest);
    double most = time("peukert=1.2", rest);
    assertThat(7.5).isBetween(least, most);
  }

  private double time(String peukert, String... rest) {
    return Asked.of(sum, peukert, rest[0], rest[1], rest[2]).in(HOURS, "time");
  }

  @Test
  void givesTheRatedTimeAtTheRatedCurrent() {
    for (BatteryKind kind : BatteryKind.values()) {
      Asked asked =
          Asked.of(sum, "kind=" + kind.word(), "load=5 A", "usable=100 %", "temperature=25 °C");
      assertThat(asked.in(HOURS, "time")).isCloseTo(20, within(1e-9));
      assertThat(asked.in(AMPERE_HOURS, "taken")).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void isShorterInTheCold() {
    double warm = Asked.of(sum, "temperature=25 °C").in(HOURS, "time");
    double cold = Asked.of(sum, "temperature=0 °C").in(HOURS, "time");
    assertThat(cold).isBetween(warm * 0.75, warm * 0.85);
  }

  @Test
  void warnsOfLoadsOutsideTheLaw() {
    assertThat(Asked.of(sum, "load=0.1 A").warnings()).anyMatch(text -> text.contains("too much"));
    assertThat(Asked.of(sum, "load=150 A").warnings()).anyMatch(text -> text.contains("guard"));
    assertThat(Asked.of(sum, "kind=lithium", "temperature=-5 °C").warnings())
        .anyMatch(text -> text.contains("must not be charged"));
  }
}
