package limberboard.desktop.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.TextFile;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;

/**
 * Keeps traces as files in a person's own state folder, {@code traces}, in a folder for each
 * workspace, one file a boat and symptom. Nothing of it lies in the workspace. For one thread.
 */
public final class TraceFiles implements TraceStore {
  private static final String ENDING = ".trace";
  private final Path folder;

  /**
   * The files of a workspace.
   *
   * @param user where a person's own things lie
   * @param workspace whose traces they are
   */
  public TraceFiles(UserFolders user, WorkspaceFolders workspace) {
    this.folder = user.state().resolve("traces").resolve(UserFolders.named(workspace));
  }

  private Path file(String boat, String symptom) {
    return folder.resolve(
        UserFolders.fileName(boat) + "--" + UserFolders.fileName(symptom) + ENDING);
  }

  @Override
  public Kept read() throws IOException {
    List<KeptTrace> traces = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.filter(TraceFiles::isOne).sorted().toList()) {
          read(file, traces, problems);
        }
      }
    }
    traces.sort(Comparator.comparing(KeptTrace::started).reversed());
    return new Kept(traces, problems);
  }

  private static boolean isOne(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(ENDING) && !name.startsWith(".");
  }

  private static void read(Path file, List<KeptTrace> traces, List<String> problems) {
    try {
      TextFile.Result text = TextFile.read(file, file.toString());
      if (!text.problems().isEmpty()) {
        throw new IOException("it " + text.problems().get(0).wrong());
      }
      traces.add(KeptTraceText.read(text.text()));
    } catch (IOException e) {
      problems.add(
          "A trace that was kept cannot be gone on with: "
              + e.getMessage()
              + ". It is left out; delete its file if you do not need it: "
              + file);
    }
  }

  @Override
  public void keep(KeptTrace trace) throws IOException {
    SafeFiles.write(file(trace.boat(), trace.symptom()), KeptTraceText.write(trace));
  }

  @Override
  public void drop(String boat, String symptom) throws IOException {
    Files.deleteIfExists(file(boat, symptom));
  }
}
