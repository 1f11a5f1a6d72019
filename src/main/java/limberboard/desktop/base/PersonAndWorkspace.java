package limberboard.desktop.base;

import java.util.Set;

/**
 * Two places to keep values in: how somebody likes to see things is the person's own, whatever the
 * workspace; which boat, which place and where the dividers stand belong to the workspace.
 *
 * @param person the person's own
 * @param workspace the workspace's
 */
public record PersonAndWorkspace(KeptValues person, KeptValues workspace) implements KeptValues {
  private static final Set<String> OWN = Set.of("theme", "text-percent", "imperial", "recorder");

  @Override
  public String get(String key) {
    return of(key).get(key);
  }

  @Override
  public void put(String key, String value) {
    of(key).put(key, value);
  }

  private KeptValues of(String key) {
    return OWN.contains(key) ? person : workspace;
  }
}
