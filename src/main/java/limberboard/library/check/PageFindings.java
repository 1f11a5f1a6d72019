package limberboard.library.check;

import java.util.List;
import javax.measure.Quantity;
import limberboard.library.problem.Report;

/** Findings on one page, with what all models know. */
record PageFindings(KnownNames names, Report report) implements FurtherCheck.Findings {
  @Override
  public void error(String pointer, String wrong, String right) {
    report.error(pointer, wrong, right);
  }

  @Override
  public List<Quantity<?>> measured(String measure) {
    return names.measured(measure);
  }

  @Override
  public void noMeasure(String measure, String pointer) {
    names.measure(measure, pointer, report);
  }
}
