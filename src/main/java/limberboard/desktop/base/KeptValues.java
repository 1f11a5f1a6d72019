package limberboard.desktop.base;

/** Values by name that are there again next time. For the event thread only. */
public interface KeptValues {
  /** The value; empty text when there is none. */
  String get(String key);

  /** Keeps a value. */
  void put(String key, String value);
}
