package limberboard.writing.symptom;

/** What came of reading a symptom's page as a table. */
public sealed interface SymptomRead permits SymptomTable, SymptomRead.Unreadable {
  /**
   * Its header cannot be read as a table, and is left alone.
   *
   * @param wrong what is wrong
   * @param right what would be right
   */
  record Unreadable(String wrong, String right) implements SymptomRead {}
}
