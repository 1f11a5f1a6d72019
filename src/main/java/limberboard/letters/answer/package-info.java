/**
 * Drafting answers to owners' letters, in pieces that a person can edit and that are written anew
 * when something changes.
 *
 * <p>To use it: say what is known of the letter, ask a {@link limberboard.letters.answer.Drafter},
 * and after a change let the old draft take over what the new one has:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.letters.answer.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.*;
 *
 * var workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * var boat = new Fitting(workspace.boat("whimbrel").orElseThrow(), LocalDate.of(2026, 11, 29));
 * var symptom = workspace.library().symptom("keel-will-not-stay-up").orElseThrow();
 * var trace = Trace.begin(Fault.of(symptom, boat, workspace.library(), workspace.cases()));
 * var drafter = new Drafter(workspace.library());
 * var about = new ToAnswer.Faults(List.of(trace));
 * var draft = drafter.draft(new ToAnswer("Ms Byrd", Optional.of(boat), List.of(), about));
 * assert draft.text().contains("Caution: Under a raised keel");
 *
 * var mine = draft.edited("closing", "See you on Friday.");
 * var asked = draft.questions().get(0);
 * var told = trace.answer(asked.check(), asked.answers().get(0));
 * var next = drafter.draft(
 *     new ToAnswer("Ms Byrd", Optional.of(boat), List.of(), new ToAnswer.Faults(List.of(told))));
 * assert mine.redrafted(next).text().endsWith("See you on Friday.\n");
 * assert mine.redrafted(next).block(symptom.id() + "/told").isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> A draft is a list of pieces, each with an id of its own; each caution and
 * each check is one. An edited piece is never written over: it says that its grounds changed. The
 * words between come from the library's wordings, and what has to be worked out never does, so that
 * no wording can leave out a caution. Why it is so: {@code docs/decisions/0035-drafted-answers.md}.
 *
 * <p><b>Threads.</b> Everything is immutable. Drafting plans the next steps, so it may take a
 * second or two: not on the event thread.
 */
package limberboard.letters.answer;
