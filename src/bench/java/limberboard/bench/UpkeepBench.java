package limberboard.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.LogEntry;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Phase;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkListMaker;
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
 * How long a whole fleet's upkeep takes, by the number of boats and procedures. Boats are the
 * demo's with lines of their logs left out at random; procedures beyond the library's own are
 * copies of them under other ids.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(1)
public class UpkeepBench {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 15);

  /** Boats of the fleet. */
  @Param({"500", "5000"})
  public int boats;

  /** Procedures of the library. */
  @Param({"100", "200", "400"})
  public int procedures;

  private Library library;
  private List<Fitting> fleet;

  /** Makes the fleet and the library, the same every time. */
  @Setup
  public void make() throws IOException {
    Workspace read = new WorkspaceReader(new WorkspaceFolders(Path.of("").toAbsolutePath())).read();
    library = library(read.library());
    Random random = new Random(1990);
    fleet = new ArrayList<>();
    for (int i = 0; i < boats; i++) {
      Boat boat = read.boats().get(i % read.boats().size());
      fleet.add(new Fitting(withLinesLost(boat, "boat-" + i, random), DAY));
    }
  }

  private Library library(Library own) {
    List<Page<?>> pages = new ArrayList<>();
    own.pages().stream().filter(page -> !(page.details() instanceof Procedure)).forEach(pages::add);
    List<Page<Procedure>> all =
        own.all(Procedure.class).stream()
            .filter(page -> page.details().interval().isPresent())
            .toList();
    for (int i = 0; i < procedures; i++) {
      Page<Procedure> page = all.get(i % all.size());
      String id = i < all.size() ? page.id() : page.id() + "-" + i / all.size();
      pages.add(
          new Page<>(id, page.path(), page.head(), page.details(), page.body(), page.bodyLine()));
    }
    return new Library(pages, Map.of(), List.of());
  }

  private static Boat withLinesLost(Boat boat, String id, Random random) {
    List<LogEntry> log = boat.log().stream().filter(entry -> random.nextInt(5) > 0).toList();
    return boat.named(id).with(log);
  }

  /** What is due on every boat. */
  @Benchmark
  public long due() {
    return fleet.stream().mapToLong(fitting -> Upkeep.of(library, fitting).all().size()).sum();
  }

  /** What is due on every boat, and its forecast over three seasons. */
  @Benchmark
  public long forecast() {
    return fleet.stream()
        .mapToLong(fitting -> Upkeep.of(library, fitting).forecast(3).size())
        .sum();
  }

  /** What is due on every boat, and its fitting-out list in the order of one walk. */
  @Benchmark
  public long list() {
    return fleet.stream().mapToLong(this::lines).sum();
  }

  private long lines(Fitting fitting) {
    ListWork work = new ListWork(Upkeep.of(library, fitting));
    return new WorkListMaker(fitting)
        .list(ListKind.FITTING_OUT, work.due(ListKind.FITTING_OUT, 2026))
        .lines()
        .count();
  }

  /** What is due on every boat, and the work of its season for a fitting-out list. */
  @Benchmark
  public long seasonWork() {
    Set<Phase> fittingOut = EnumSet.complementOf(EnumSet.of(Phase.LAY_UP));
    return fleet.stream()
        .mapToLong(fitting -> Upkeep.of(library, fitting).season(2026).tasks(fittingOut).size())
        .sum();
  }
}
