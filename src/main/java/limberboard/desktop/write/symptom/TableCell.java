package limberboard.desktop.write.symptom;

/** What a cell of the table is about. Causes, checks and answers are told by number, from 0. */
sealed interface TableCell {
  /** What the page is called. */
  record PageTitle() implements TableCell {}

  /** Where on the boat it is noticed. */
  record Zones() implements TableCell {}

  /** What a check asks. */
  record Ask(int check) implements TableCell {}

  /** How a check is done. */
  record How(int check) implements TableCell {}

  /** How long a check takes. */
  record CheckMinutes(int check) implements TableCell {}

  /** An answer of a check; one that is yet to be given, where the place is behind the last. */
  record Answer(int check, int place) implements TableCell {}

  /** What a cause is called. */
  record CauseTitle(int cause) implements TableCell {}

  /** How common a cause is. */
  record Weight(int cause) implements TableCell {}

  /** What mends a cause. */
  record Mend(int cause) implements TableCell {}

  /** How likely an answer is under a cause; under all others where the cause is {@link #OTHERS}. */
  record Word(int check, int place, int cause) implements TableCell {
    /** Stands for all causes that the check does not name. */
    static final int OTHERS = -1;
  }

  /** A cause that is not there yet. */
  record NewCause() implements TableCell {}

  /** A check that is not there yet. */
  record NewCheck() implements TableCell {}

  /** Only a word beside or above others. */
  record Caption(String words) implements TableCell {}
}
