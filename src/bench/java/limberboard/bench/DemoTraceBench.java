package limberboard.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the first step of each demo symptom takes, on the boat of the workspace where it has the
 * most causes and checks.
 */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.AverageTime, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DemoTraceBench {
  private static final LocalDate A_DAY = LocalDate.of(2026, 6, 1);

  /** The symptom. */
  @Param({
    "battery-goes-flat",
    "centreboard-stuck",
    "clutch-slips",
    "diesel-overheats",
    "furler-jams",
    "keel-will-not-stay-up",
    "masthead-light-dead",
    "oil-in-keel-compartment",
    "outboard-will-not-start",
    "play-in-steering",
    "rust-under-deck-fitting",
    "toilet-smells",
    "water-in-forward-cabin",
    "water-in-main-bilge",
    "water-under-cockpit"
  })
  public String symptom;

  private Fault fault;

  /** Reads the workspace. */
  @Setup
  public void read() throws IOException {
    Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    Page<Symptom> page = workspace.library().symptom(symptom).orElseThrow();
    fault =
        workspace.boats().stream()
            .map(boat -> new Fitting(boat, A_DAY))
            .filter(fitting -> fitting.fits(page.head().fits()))
            .map(fitting -> Fault.of(page, fitting, workspace.library(), workspace.cases()))
            .max(Comparator.comparingInt(one -> one.causes().size() * one.checks().size()))
            .orElseThrow();
  }

  /** The first step of a trace. */
  @Benchmark
  public NextStep firstStep() {
    return Trace.begin(fault).next();
  }
}
