package limberboard.library;

/** Background reading: nothing beyond what every page has. */
public record Topic() implements Details {
  @Override
  public Kind kind() {
    return Kind.TOPIC;
  }
}
