package limberboard.drill.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.Progress;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.problem.Problem;

/**
 * The students of a workspace, one file each in {@code drills/students/}. They belong to one
 * computer: a file that keeps them out of what is shared is written beside them.
 *
 * <p>A drill is added at the end of the file, and only when the file can still be read with it;
 * what somebody wrote into it by hand stays to the letter.
 *
 * @param folders the workspace
 */
public record StudentFiles(WorkspaceFolders folders) {
  private static final String NOT_SHARED = ".gitignore";
  private static final int KEY = 4;

  /**
   * A student as the file has it.
   *
   * @param progress what was drilled
   * @param key tells two students of one name apart
   */
  public record Student(Progress progress, String key) {}

  /**
   * What came of reading or writing.
   *
   * @param student the student, if the file is there and can be read
   * @param problems what is wrong; the file is then as it was
   */
  public record Read(Optional<Student> student, List<Problem> problems) {
    /** Copies the list. */
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** Where they lie. */
  public Path folder() {
    return folders.root().resolve("drills").resolve("students");
  }

  /** The file of a student; names that differ in their signs alone share one. */
  public Path file(String name) {
    String plain =
        name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return folder().resolve((plain.isEmpty() ? "student" : plain) + DrillFiles.ENDING);
  }

  /** A student who may not be there yet: nothing drilled then. */
  public Read read(String name) {
    Path file = file(name);
    if (!Files.exists(file)) {
      return new Read(Optional.empty(), List.of());
    }
    TextFile.Result text = TextFile.read(folders, file, TextFile.LARGEST);
    return text.problems().isEmpty()
        ? named(name, read(file, text.text()))
        : new Read(Optional.empty(), text.problems());
  }

  /** All students whose files can be read, with what is wrong in the others. */
  public List<Read> all() {
    List<Read> all = new ArrayList<>();
    if (Files.isDirectory(folder())) {
      try (var files = Files.newDirectoryStream(folder(), "*" + DrillFiles.ENDING)) {
        List<Path> sorted = new ArrayList<>();
        files.forEach(sorted::add);
        sorted.sort(null);
        for (Path file : sorted) {
          TextFile.Result text = TextFile.read(folders, file, TextFile.LARGEST);
          all.add(
              text.problems().isEmpty()
                  ? read(file, text.text())
                  : new Read(Optional.empty(), text.problems()));
        }
      } catch (IOException e) {
        all.add(wrong(folder(), "cannot be read: " + e.getMessage(), "look at its permissions"));
      }
    }
    return all;
  }

  /**
   * Adds a drill to a student's file, and begins the file where it is not there.
   *
   * @param seed of the drill
   */
  public Read add(String name, DrillRecord drill, long seed) {
    Path file = file(name);
    try {
      Files.createDirectories(folder());
      Path notShared = folder().resolve(NOT_SHARED);
      if (!Files.exists(notShared)) {
        SafeFiles.write(notShared, "*\n");
      }
    } catch (IOException e) {
      return wrong(file, "cannot be written: " + e.getMessage(), "look at its folder");
    }
    return new SharedTextFile(folders, file, TextFile.LARGEST)
        .<Read>change(
            now -> with(file, name, now, drill, seed),
            problem -> new Read(Optional.empty(), List.of(problem)));
  }

  private Rewrite<Read> with(
      Path file, String name, Optional<String> now, DrillRecord drill, long seed) {
    String before = now.filter(text -> !text.isBlank()).orElseGet(() -> beginning(name));
    Read was = named(name, read(file, before));
    if (was.student().isEmpty()) {
      return Rewrite.leave(was);
    }
    String entry = WrittenYaml.of(List.of(MarkedEntry.keys(drill, seed)));
    String after = before + (before.endsWith("\n") ? "" : "\n") + entry;
    Read is = read(file, after);
    int drills = was.student().get().progress().drills().size();
    if (is.student().map(each -> each.progress().drills().size()).orElse(0) != drills + 1) {
      return Rewrite.leave(
          wrong(
              file,
              "no drill can be added at its end",
              "let drills: be the last key of the file, with one entry a line beginning with -;"
                  + " nothing was written"));
    }
    return Rewrite.write(Optional.of(after), is);
  }

  private static String beginning(String name) {
    byte[] key = new byte[KEY];
    new SecureRandom().nextBytes(key);
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("student", name);
    keys.put("key", "k" + HexFormat.of().formatHex(key));
    return WrittenYaml.of(keys) + "drills:\n";
  }

  private Read read(Path file, String text) {
    String name = folders.relative(file);
    HeaderBinder.Bound<StudentEntry> bound =
        new HeaderBinder().read(name, text, StudentEntry.class);
    if (bound.value().isEmpty() || !bound.problems().isEmpty()) {
      return new Read(Optional.empty(), bound.problems());
    }
    StudentEntry entry = bound.value().get();
    List<DrillRecord> drills = new ArrayList<>();
    for (int i = 0; i < entry.drills().size(); i++) {
      try {
        drills.add(entry.drills().get(i).drill());
      } catch (IllegalArgumentException e) {
        return new Read(
            Optional.empty(),
            List.of(
                Problem.error(
                    name,
                    bound.line("drills." + i),
                    "drills." + i,
                    e.getMessage(),
                    "put it right; the file is as it was")));
      }
    }
    return new Read(
        Optional.of(new Student(new Progress(entry.student(), drills), entry.key())), List.of());
  }

  /** Names that share a file are told apart rather than counted together. */
  private Read named(String name, Read read) {
    Optional<String> there = read.student().map(each -> each.progress().student());
    return there.isEmpty() || there.get().equals(name)
        ? read
        : wrong(
            file(name),
            "belongs to “" + there.get() + "”, not to “" + name + "”",
            "write the name as it stands there, or add a number to this one");
  }

  private Read wrong(Path file, String wrong, String right) {
    return new Read(
        Optional.empty(), List.of(Problem.error(folders.relative(file), 0, "", wrong, right)));
  }
}
