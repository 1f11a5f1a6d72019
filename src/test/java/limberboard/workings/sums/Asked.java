package limberboard.workings.sums;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.library.value.KnownUnit;

/** Asks sums as a terminal would, {@code "depth=0.5 m"}. */
final class Asked {
  private final Reckoning.Done done;

  private Asked(Reckoning.Done done) {
    this.done = done;
  }

  static Map<String, Value> values(String... puts) {
    Map<String, Value> values = new LinkedHashMap<>();
    for (String put : puts) {
      int equals = put.indexOf('=');
      values.put(put.substring(0, equals), Value.read(put.substring(equals + 1)));
    }
    return values;
  }

  static Asked of(Sum sum, String... puts) {
    Reckoning reckoning = sum.reckon(values(puts));
    assertThat(reckoning).isInstanceOf(Reckoning.Done.class);
    return new Asked((Reckoning.Done) reckoning);
  }

  static List<String> refused(Sum sum, String... puts) {
    Reckoning reckoning = sum.reckon(values(puts));
    assertThat(reckoning).isInstanceOf(Reckoning.Refused.class);
    return ((Reckoning.Refused) reckoning).reasons();
  }

  double in(KnownUnit unit, String result) {
    return done.answer().results().stream()
        .filter(each -> each.id().equals(result))
        .map(each -> unit.of(((Result.Reckoned) each).quantity()).orElseThrow())
        .findFirst()
        .orElseThrow();
  }

  String said(String result) {
    return done.answer().results().stream()
        .filter(each -> each.id().equals(result))
        .map(each -> ((Result.Said) each).said())
        .findFirst()
        .orElseThrow();
  }

  List<String> warnings() {
    return done.answer().warnings();
  }

  List<String> working() {
    return done.answer().working();
  }
}
