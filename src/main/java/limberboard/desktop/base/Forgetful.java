package limberboard.desktop.base;

import java.util.HashMap;
import java.util.Map;

/** Values that are gone when the program ends, for pictures and trials. */
public final class Forgetful implements KeptValues {
  private final Map<String, String> values = new HashMap<>();

  @Override
  public String get(String key) {
    return values.getOrDefault(key, "");
  }

  @Override
  public void put(String key, String value) {
    values.put(key, value);
  }
}
