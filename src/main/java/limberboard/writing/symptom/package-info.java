/**
 * A symptom's causes and checks as a table of likelihood words that is filled in place: {@link
 * limberboard.writing.symptom.SymptomTable} reads it, {@link
 * limberboard.writing.symptom.SymptomEdits} changes it.
 *
 * <p>To use it: read a page's text; where it can be read, ask for what stands in it, and take
 * another text from each change.
 *
 * <pre>{@code
 * import java.util.Optional;
 * import limberboard.writing.PageText;
 * import limberboard.writing.symptom.*;
 *
 * var page = new PageText(
 *     "---\ntitle: Wet locker\ncauses:\n  - id: hatch # old\n    title: The hatch leaks\n"
 *         + "checks:\n  - {id: rain, ask: 'After rain?', answers: [yes, no]}\n---\n");
 * var table = (SymptomTable) SymptomTable.read(page);
 * var word = LikelihoodKeys.word('7');
 * assert word.equals(Optional.of("usually"));
 * PageText filled = new SymptomEdits(table).likelihood(0, "yes", "hatch", word);
 * assert filled.text().contains("answers: [yes, no], finds: {\"yes\": {hatch: usually}}}");
 * assert filled.text().contains("- id: hatch # old\n");
 * var broken = SymptomTable.read(new PageText("---\ntitle: [\n---\n"));
 * assert broken instanceof SymptomRead.Unreadable;
 * }</pre>
 *
 * <p><b>Choices made.</b> The table is read from the header as it stands, so that a page that is
 * not finished, or is wrong, can be filled and mended in it. A change is a splice of letters, read
 * again and compared with what was meant. Ids stay when names change: recorded cases name causes by
 * their ids. What is missing is filled up for looking at the tree alone ({@link
 * limberboard.writing.symptom.DraftSymptom}).
 *
 * <p><b>Threads.</b> All values are immutable.
 */
package limberboard.writing.symptom;
