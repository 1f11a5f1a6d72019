/**
 * Drills on paper: a sheet for each student, and the trainer's key with the answer to every number.
 *
 * <p>To use it: make a {@link limberboard.drill.paper.PaperPack}, and print its {@link
 * limberboard.drill.paper.StudentSheet}s and its {@link limberboard.drill.paper.TrainerKey}.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.drill.Counsel;
 * import limberboard.drill.paper.*;
 * import limberboard.library.file.WorkspaceFolders;
 * import limberboard.trace.Fault;
 *
 * Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
 * LocalDate day = LocalDate.of(2026, 3, 15);
 * Fitting turnstone = new Fitting(workspace.boat("turnstone").orElseThrow(), day);
 * var symptom = workspace.library().symptom("play-in-steering").orElseThrow();
 * Fault fault = Fault.of(symptom, turnstone, workspace.library(), workspace.cases());
 * PaperPack pack = PaperPack.of(fault, 7, 2);
 * var key = new TrainerKey(pack, new Counsel(fault));
 * assert key.lines(1).size() == pack.numbers().size();
 * assert new StudentSheet(pack).of(2).title().startsWith("Sheet 2");
 * }</pre>
 *
 * <p><b>Choices made.</b> A number means the same on every sheet, so that the trainer learns them;
 * the hidden faults and the answers differ. All cautions stand on every sheet.
 *
 * <p><b>Threads.</b> A key belongs to one thread.
 */
package limberboard.drill.paper;
