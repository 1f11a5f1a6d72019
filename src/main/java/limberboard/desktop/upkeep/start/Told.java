package limberboard.desktop.upkeep.start;

import java.util.Optional;
import limberboard.boat.HowKnown.From;

/** What can be chosen beside a question of the start. */
enum Told {
  /** Of one piece of work: as is said of the whole question. */
  AS_ABOVE("As above", Optional.empty()),
  /** Of a question: each piece of work by itself, the others are not known. */
  EACH("Each by itself", Optional.empty()),
  /** Nobody knows. */
  NOT_KNOWN("Not known", Optional.empty()),
  /** A survey says so. */
  SURVEY("Survey", Optional.of(From.SURVEY)),
  /** There is a bill. */
  BILL("Bill", Optional.of(From.BILL)),
  /** The previous owner said so. */
  SAID("Previous owner said", Optional.of(From.SAID)),
  /** The owner has seen a date on the part. */
  DATE_SEEN("Date seen on the part", Optional.of(From.SEEN)),
  /** There is no such thing. */
  NOT_ABOARD("Not aboard", Optional.empty());

  private final String title;
  private final Optional<From> from;

  Told(String title, Optional<From> from) {
    this.title = title;
    this.from = from;
  }

  /** What a person reads. */
  String title() {
    return title;
  }

  /** Who or what tells, where it is known and so has a day. */
  Optional<From> from() {
    return from;
  }
}
