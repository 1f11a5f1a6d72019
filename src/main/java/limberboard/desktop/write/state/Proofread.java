package limberboard.desktop.write.state;

import java.util.List;
import java.util.Map;
import limberboard.findings.FileRepair;
import limberboard.library.problem.Problem;

/**
 * What a proofreader found in a text.
 *
 * @param remarks what nobody has answered, by line
 * @param repairs the one step that mends a problem of the file, where that is certain
 */
record Proofread(List<TextFinding> remarks, Map<Problem, FileRepair> repairs) {
  /** Nothing found. */
  static final Proofread NOTHING = new Proofread(List.of(), Map.of());

  /** Copies what it is given. */
  Proofread {
    remarks = List.copyOf(remarks);
    repairs = Map.copyOf(repairs);
  }
}
