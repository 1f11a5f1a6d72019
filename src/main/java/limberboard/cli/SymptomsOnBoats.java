package limberboard.cli;

import java.util.List;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;

/**
 * Symptoms on each boat of a workspace that they fit, in the order of the pages.
 *
 * @param session where the command runs
 * @param workspace the workspace
 */
record SymptomsOnBoats(CommandContext session, Workspace workspace) {

  /** A symptom on a boat. */
  record One(Page<Symptom> symptom, Fitting fitting) {}

  /** All symptoms there are. */
  Stream<One> all() {
    return of(workspace.library().all(Symptom.class));
  }

  /** Some of them. */
  Stream<One> of(List<Page<Symptom>> symptoms) {
    return symptoms.stream()
        .flatMap(
            symptom ->
                workspace.boats().stream()
                    .map(boat -> new One(symptom, new Fitting(boat, session.today())))
                    .filter(one -> one.fitting().fits(symptom.head().fits())));
  }

  /** With what is wrong and how likely. */
  Fault fault(One one) {
    return Fault.of(one.symptom(), one.fitting(), workspace.library(), workspace.cases());
  }
}
