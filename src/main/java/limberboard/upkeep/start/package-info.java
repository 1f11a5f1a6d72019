/**
 * The start of a bought boat: a log that begins with what is known of what others did.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.upkeep.start.Start} of what is due on a boat that has a day on
 *       which she was bought, and ask its {@linkplain limberboard.upkeep.start.Start#questions()
 *       questions};
 *   <li>read what a person says with an {@link limberboard.upkeep.start.AnswerText};
 *   <li>write the {@linkplain limberboard.upkeep.start.Start#entries lines} that the answers make
 *       into her log, with its own writer.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.upkeep.*;
 * import limberboard.upkeep.start.*;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate day = LocalDate.of(2026, 11, 28);
 * Boat empty = workspace.boat("whimbrel").orElseThrow().with(List.of());
 * Boat bought = empty.bought(LocalDate.of(2026, 10, 3));
 * Start start = new Start(Upkeep.of(workspace.library(), new Fitting(bought, day)));
 * assert start.standing() == Start.Standing.NOT_BEGUN;
 * StartQuestion first = start.questions().get(0);
 * var said = new AnswerText(bought, day).read("said 2025").good().orElseThrow();
 * List<LogEntry> lines = start.entries(Map.of(first.id(), said));
 * assert lines.size() == first.works().size();
 * assert lines.get(0).day().equals("about 2025");
 * }</pre>
 *
 * <p><b>Choices made.</b> It is asked by round and by kind of work, not by line, so that it takes
 * minutes. Nothing is invented: what nobody knows stays out of the log and is looked at first, the
 * gravest first; a month or year is kept as such and counts from its first day. A survey tells of
 * looks only. Reasons: {@code docs/decisions/0031-bought-boats.md}.
 *
 * <p><b>Threads.</b> All values are immutable; nothing here reads a file or a clock.
 */
package limberboard.upkeep.start;
