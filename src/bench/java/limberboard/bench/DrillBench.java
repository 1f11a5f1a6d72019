package limberboard.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.drill.Counsel;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.paper.PaperPack;
import limberboard.drill.paper.StudentSheet;
import limberboard.drill.paper.TrainerKey;
import limberboard.drill.play.ByRule;
import limberboard.drill.play.PlayedDrills;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.trace.Fault;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes to play and mark 1,000 drills on one fault, and to make the pack for 20. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class DrillBench {
  private static final int DRILLS = 1000;
  private static final int STUDENTS = 20;

  private final WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
  private Fault fault;

  /** Reads the workspace. */
  @Setup
  public void read() throws IOException {
    Workspace workspace = new WorkspaceReader(folders).read();
    Fitting whimbrel =
        new Fitting(workspace.boat("whimbrel").orElseThrow(), LocalDate.of(2026, 6, 1));
    fault =
        Fault.of(
            workspace.library().symptom("oil-in-keel-compartment").orElseThrow(),
            whimbrel,
            workspace.library(),
            workspace.cases());
  }

  /** Plays and marks, planning each situation once. */
  @Benchmark
  public double markAThousand() {
    return PlayedDrills.of(fault, new Counsel(fault), ByRule.mostTellingFirst(), DRILLS)
        .mean(DrillMark::regret);
  }

  /** Sheets and key as PDF. */
  @Benchmark
  public int packForTwenty() throws IOException {
    PaperPack pack = PaperPack.of(fault, 1, STUDENTS);
    StudentSheet sheet = new StudentSheet(pack);
    List<CutPage> sheets = IntStream.rangeClosed(1, STUDENTS).mapToObj(sheet::of).toList();
    Pdf pdf = new Pdf(Pictures.in(folders));
    return pdf.of(sheets).length + pdf.of(new TrainerKey(pack, new Counsel(fault)).sheet()).length;
  }
}
