package limberboard.desktop.base;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.AbstractPreferences;

/** Preferences that are gone when the program ends, for pictures and trials. */
public final class Forgetful extends AbstractPreferences {
  private final Map<String, String> values = new HashMap<>();
  private final Map<String, Forgetful> children = new HashMap<>();

  /** Empty preferences. */
  public Forgetful() {
    this(null, "");
  }

  private Forgetful(Forgetful parent, String name) {
    super(parent, name);
  }

  @Override
  protected void putSpi(String key, String value) {
    values.put(key, value);
  }

  @Override
  protected String getSpi(String key) {
    return values.get(key);
  }

  @Override
  protected void removeSpi(String key) {
    values.remove(key);
  }

  @Override
  protected void removeNodeSpi() {
    values.clear();
  }

  @Override
  protected String[] keysSpi() {
    return values.keySet().toArray(String[]::new);
  }

  @Override
  protected String[] childrenNamesSpi() {
    return children.keySet().toArray(String[]::new);
  }

  @Override
  protected AbstractPreferences childSpi(String name) {
    return children.computeIfAbsent(name, key -> new Forgetful(this, key));
  }

  @Override
  protected void syncSpi() {
    // there is nowhere to sync to
  }

  @Override
  protected void flushSpi() {
    // there is nowhere to write to
  }
}
