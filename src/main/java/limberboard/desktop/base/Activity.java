package limberboard.desktop.base;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What is being done in the background at the moment. For the event thread only. */
public final class Activity extends Observed {
  private final Map<Object, String> running = new LinkedHashMap<>();

  /** Notes that something has begun; the answer is handed to {@link #end}. */
  public Object begin(String doing) {
    Object token = new Object();
    running.put(token, doing);
    tell();
    return token;
  }

  /** Notes that it is over. */
  public void end(Object token) {
    running.remove(token);
    tell();
  }

  /** What has been running longest. */
  public Optional<String> now() {
    return running.values().stream().findFirst();
  }
}
