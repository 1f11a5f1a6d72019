package limberboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.drill.learn.ClassResults;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.Progress;
import limberboard.drill.mark.Certainty;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code class}: the results of a class, gathered. */
@Command(
    name = "class",
    mixinStandardHelpOptions = true,
    description = {
      "Gathers the results of a class, files or folders of them: who played what, and where it"
          + " costs, luck apart.",
      "Each is marked on the figures it was played on; one that cannot be is named with the reason,"
          + " and the others are gathered. No file is changed."
    })
final class ClassCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "FILE|FOLDER", arity = "1..*", description = "Results of drill run.")
  private List<Path> what = List.of();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ClassCommand(CommandContext session) {
    this.session = session;
  }

  /** A student as {@code --json} prints it; the keys are documented and stay. */
  record PupilView(
      String student,
      int drills,
      double regret,
      int dangers,
      Map<String, Progress.Cost> symptoms,
      Map<String, Double> mistakes,
      OptionalDouble brier) {
    static PupilView of(Progress each) {
      Map<String, Double> mistakes = new LinkedHashMap<>();
      each.mistakes().forEach((kind, cost) -> mistakes.put(kind.word(), cost));
      return new PupilView(
          each.student(),
          each.drills().size(),
          each.drills().stream().mapToDouble(DrillRecord::regret).sum(),
          each.drills().stream().mapToInt(DrillRecord::dangers).sum(),
          each.symptoms(),
          mistakes,
          Certainty.brier(each.certainties()));
    }
  }

  /** The class. */
  record View(
      List<PupilView> students,
      PupilView all,
      Set<String> sharedNames,
      int twice,
      List<String> refused) {}

  @Override
  public Integer call() throws IOException {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    List<String> refused = new ArrayList<>();
    List<ClassResults.Played> played = new ArrayList<>();
    for (Path file : files()) {
      try {
        played.add(played(read, file));
      } catch (Failure failure) {
        refused.add(failure.getMessage());
        session.err().println("limberboard: " + failure.getMessage());
      }
    }
    ClassResults results = new ClassResults(played);
    View view =
        new View(
            results.students().stream().map(PupilView::of).toList(),
            PupilView.of(results.all()),
            results.sharedNames(),
            results.twice(),
            refused);
    if (json) {
      new JsonOutput(session.out()).print(view);
    } else {
      print(view);
    }
    return refused.isEmpty() ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path each : what) {
      Path asked = session.folder().resolve(each);
      if (!Files.isDirectory(asked)) {
        files.add(each);
        continue;
      }
      try (var inside = Files.newDirectoryStream(asked, "*" + DrillFiles.ENDING)) {
        List<Path> sorted = new ArrayList<>();
        inside.forEach(sorted::add);
        sorted.sort(null);
        files.addAll(sorted);
      }
    }
    return files;
  }

  private ClassResults.Played played(Workspace read, Path file) {
    KeptDrill kept = DrillMaker.read(session, file);
    try {
      return new WorkspaceDrills(read, session.today()).played(kept, step -> {});
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.NOT_FOUND, file + ": " + e.getMessage());
    }
  }

  private void print(View view) {
    session
        .out()
        .printf(
            Locale.ROOT,
            "%-30s %6s %12s %8s %6s  %s%n",
            "student",
            "drills",
            "minutes lost",
            "dangers",
            "Brier",
            "where it costs most");
    view.students().forEach(this::line);
    line(view.all());
    if (!view.sharedNames().isEmpty()) {
      session
          .out()
          .println(
              "Several students are called "
                  + String.join(", ", view.sharedNames())
                  + "; their keys stand behind the name.");
    }
    if (view.twice() > 0) {
      session.out().println("Handed in more than once, and counted once: " + view.twice() + ".");
    }
  }

  private void line(PupilView each) {
    String most =
        each.symptoms().entrySet().stream()
            .findFirst()
            .map(
                entry ->
                    String.format(
                        Locale.ROOT, "%s %.0f", entry.getKey(), entry.getValue().regret()))
            .orElse("");
    String kind =
        each.mistakes().entrySet().stream()
            .findFirst()
            .map(entry -> String.format(Locale.ROOT, "; %s %.0f", entry.getKey(), entry.getValue()))
            .orElse("");
    session
        .out()
        .printf(
            Locale.ROOT,
            "%-30s %6d %12.1f %8d %6s  %s%n",
            each.student().isEmpty() ? "all" : each.student(),
            each.drills(),
            each.regret(),
            each.dangers(),
            each.brier().isPresent()
                ? String.format(Locale.ROOT, "%.2f", each.brier().getAsDouble())
                : "",
            most + kind);
  }
}
