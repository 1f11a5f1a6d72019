/**
 * Entries of a log: the form that is filled, the log that is written, and steps that go back and
 * forth.
 *
 * <p>To use it: fill an {@link limberboard.desktop.upkeep.entry.EntryForm}, which knows no Swing,
 * show it with {@link limberboard.desktop.upkeep.entry.EntryFields}, and hand what it makes to the
 * {@link limberboard.desktop.upkeep.entry.LogModel}, which writes, takes back and makes again.
 *
 * <pre>{@code
 * import java.time.LocalDate;
 * import java.util.List;
 * import java.util.Optional;
 * import limberboard.desktop.upkeep.entry.EntryForm;
 *
 * var today = LocalDate.of(2026, 3, 15);
 * var form = new EntryForm("rebed-deck-fitting", Optional.empty(), today, List.of());
 * form.set(EntryForm.Field.DAY, "31 February");
 * assert !form.problem(EntryForm.Field.DAY).isEmpty() && form.entry().isEmpty();
 * form.set(EntryForm.Field.DAY, "14 March 2026");
 * assert form.entry().orElseThrow().date().equals(today.minusDays(1));
 * }</pre>
 *
 * <p><b>Choices made.</b> Written by the backgrounds, to the letter undone. See {@code
 * docs/decisions/0019-log-steps-and-days.md}.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; a {@link
 * limberboard.desktop.upkeep.entry.LogStore} is called by the background.
 */
package limberboard.desktop.upkeep.entry;
