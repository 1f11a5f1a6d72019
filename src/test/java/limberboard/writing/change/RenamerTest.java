package limberboard.writing.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RenamerTest {
  @TempDir Path folder;

  private static RenameOutcome rename(WorkspaceFolders folders, String from, String to)
      throws IOException {
    return new Renamer(folders).rename(new LibraryReader(folders).read(), from, to);
  }

  private String text(String path) throws IOException {
    return Files.readString(folder.resolve(path));
  }

  private static Map<Path, String> files(Path root) throws IOException {
    Map<Path, String> files = new HashMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            root.relativize(file), java.util.HexFormat.of().formatHex(Files.readAllBytes(file)));
      }
    }
    return files;
  }

  @Test
  void everyPlaceThatNamesThePageIsChangedAndNothingElse() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    String symptom =
        "\uFEFF---\r\ntitle: mend\r\nzones: [cabin]\r\ncauses:\r\n"
            + "  - {id: mend, title: mend, weight: 1, mend: 'mend'} # mend\r\n"
            + "checks:\r\n  - {id: c, ask: A, how: B, minutes: 1, answers: [mend, no], "
            + "finds: {mend: {mend: often}}}\r\n---\r\n"
            + "[mend](../procedures/mend.md) and [a [b] c](<../procedures/mend.md> \"mend.md\"), "
            + "[far](../procedures/../procedures/mend.md#mend) [x][y] `[m](../procedures/mend.md)`"
            + " [odd](../procedures/%6Dend.md)\r\n\r\n[y]: ../procedures/mend.md\r\n";
    workspace.write("articles/symptoms/s.md", symptom);
    workspace.write(
        "articles/procedures/round.md",
        "---\ntitle: Round\nsystem: hull\nwork: service\nskill: owner\nminutes: 5\n"
            + "resets:\n  - mend # first\nbefore: [\"mend\"]\nround:\n  - {do: mend, minutes: 3}\n"
            + "look-again: {after: P1M, with: mend}\ninterval: {every: P1Y, from-event: mend}\n"
            + "---\n[Mend](mend.md).\n");
    workspace.write("boats/knot/boat.yaml", "name: mend\nmodel: plover-20\nhull: 1\nbuilt: 2014\n");
    workspace.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note,of\r\n2026-05-01,mend,,\"mend, \"\"mend\"\"\",\r\n"
            + "2026-06-01,looked-again,,,\"mend\"\r\n");
    workspace.write(
        "boats/cases/one.yaml",
        "symptom: s\ncause: mend\ndate: 2026-05-01\nmodel: plover-20\nmend: mend # done\n");
    RenameOutcome.Renamed renamed =
        (RenameOutcome.Renamed) rename(workspace.folders(), "mend", "mend-it-well");
    assertThat(renamed.places())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "articles/symptoms/s.md", 6,
                "articles/procedures/round.md", 6,
                "boats/knot/log.csv", 2,
                "boats/cases/one.yaml", 1));
    assertThat(text("articles/symptoms/s.md"))
        .isEqualTo(
            symptom
                .replace("mend: 'mend'", "mend: 'mend-it-well'")
                .replace("[mend](../procedures/mend.md)", "[mend](../procedures/mend-it-well.md)")
                .replace("<../procedures/mend.md>", "<../procedures/mend-it-well.md>")
                .replace("../procedures/mend.md#", "../procedures/mend-it-well.md#")
                .replace("%6Dend.md", "mend-it-well.md".replace("mend-it", "mend-it"))
                .replace("[y]: ../procedures/mend.md", "[y]: ../procedures/mend-it-well.md"));
    assertThat(text("articles/procedures/round.md"))
        .contains("- mend-it-well # first", "[\"mend-it-well\"]", "do: mend-it-well, minutes")
        .contains("with: mend-it-well", "from-event: mend-it-well", "(mend-it-well.md)");
    assertThat(text("boats/knot/log.csv"))
        .contains("01,mend-it-well,,\"mend, \"\"mend\"\"\",\r\n", ",,,\"mend-it-well\"\r\n");
    assertThat(text("boats/cases/one.yaml")).contains("cause: mend\n", "mend: mend-it-well # done");
    assertThat(text("boats/knot/boat.yaml")).contains("name: mend\n");
    assertThat(folder.resolve("articles/procedures/mend.md")).doesNotExist();
    assertThat(folder.resolve("articles/procedures/mend-it-well.md")).exists();
    assertThat(folder.resolve(".renaming")).doesNotExist();
    Workspace read = new WorkspaceReader(workspace.folders()).read();
    assertThat(read.problems().stream().map(Problem::wrong))
        .noneMatch(wrong -> wrong.contains("mend"));
  }

  @Test
  void lettersDrillsAndModelsAreFollowed() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/symptoms/wet.md",
        "---\n"
            + "title: Wet\n"
            + "zones: [cabin]\n"
            + "causes: []\n"
            + "checks: []\n"
            + "fits: {any: [{model: plover-20}]}\n"
            + "---\n");
    workspace.write("boats/knot/boat.yaml", "name: K\nmodel: plover-20\nhull: 1\nbuilt: 2014\n");
    workspace.write(
        "boats/letters/a.yaml",
        "model: plover-20\nsymptoms: [wet]\nanswers: {wet: {taste: salt}}\n");
    workspace.write(
        "boats/letters/a.eml.state",
        "symptoms: [\"wet\"]\nanswers:\n  \"wet\":\n    \"taste\": \"salt\"\npieces:\n"
            + "  - piece: \"wet/mend\"\n    after: \"greeting\"\n    text:\n      - \".wet\"\n");
    workspace.write("drills/c.yaml", "title: wet\ndrills:\n  - {symptom: wet, boat: knot}\n");
    workspace.write("drills/students/ann.yaml", "student: wet\ndrills:\n  - symptom: wet\n");
    assertThat(rename(workspace.folders(), "wet", "damp"))
        .isInstanceOf(RenameOutcome.Renamed.class);
    assertThat(text("boats/letters/a.yaml"))
        .isEqualTo("model: plover-20\nsymptoms: [damp]\nanswers: {damp: {taste: salt}}\n");
    assertThat(text("boats/letters/a.eml.state"))
        .contains("[\"damp\"]", "\"damp\":\n", "piece: \"damp/mend\"", "\".wet\"");
    assertThat(text("drills/c.yaml"))
        .isEqualTo("title: wet\ndrills:\n  - {symptom: damp, boat: knot}\n");
    assertThat(text("drills/students/ann.yaml")).contains("student: wet", "symptom: damp");
    rename(workspace.folders(), "plover-20", "plover-21");
    assertThat(text("articles/symptoms/damp.md")).contains("model: plover-21");
    assertThat(text("boats/letters/a.yaml")).startsWith("model: plover-21");
    assertThat(text("boats/knot/boat.yaml")).contains("model: plover-21");
  }

  @Test
  void badIdsAndClashesChangeNothing() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    Map<Path, String> before = files(folder);
    for (String id : List.of("Mend It", "", "../out", "spanner", "flood", "mend")) {
      RenameOutcome outcome = rename(workspace.folders(), "mend", id);
      assertThat(outcome).as(id).isInstanceOf(RenameOutcome.Refused.class);
    }
    assertThat(rename(workspace.folders(), "nobody", "x"))
        .isInstanceOf(RenameOutcome.Refused.class);
    assertThat(files(folder)).isEqualTo(before);
  }

  @Test
  void aFileThatMayNotBeWrittenStopsItBeforeAnythingIsChanged() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    Path page =
        workspace.write("articles/topics/a.md", "---\ntitle: A\n---\n[m](../procedures/mend.md)\n");
    Map<Path, String> before = files(folder);
    Files.setPosixFilePermissions(page, PosixFilePermissions.fromString("r--r--r--"));
    org.junit.jupiter.api.Assumptions.assumeFalse(Files.isWritable(page), "the superuser may");
    RenameOutcome.Refused refused =
        (RenameOutcome.Refused) rename(workspace.folders(), "mend", "mended");
    assertThat(refused.problems().get(0).toString())
        .contains("articles/topics/a.md", "may not be written", "nothing was changed");
    assertThat(files(folder)).isEqualTo(before);
  }

  @Test
  void whatWasCutShortAnywhereIsGoneOnWith() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    WorkspaceFolders folders = workspace.folders();
    for (int i = 0; i < 4; i++) {
      workspace.write(
          "articles/topics/t" + i + ".md", "---\ntitle: T\n---\n[m](../procedures/mend.md)\n");
    }
    for (int done = 0; done <= 5; done++) {
      String from = done % 2 == 0 ? "mend" : "mended";
      String to = done % 2 == 0 ? "mended" : "mend";
      Files.writeString(
          folder.resolve(".renaming"), "kind: procedures\nfrom: " + from + "\nto: " + to + "\n");
      for (int i = 0; i < Math.min(done, 4); i++) {
        Path file = folder.resolve("articles/topics/t" + i + ".md");
        Files.writeString(
            file, Files.readString(file).replace("/" + from + ".md", "/" + to + ".md"));
      }
      Path page = folder.resolve("articles/procedures/" + from + ".md");
      if (done == 5) {
        Files.move(page, page.resolveSibling(to + ".md"));
      }
      Files.writeString(page.resolveSibling("." + from + ".md-12.tmp"), "half");
      assertThat(new Renamer(folders).finish()).isEmpty();
      assertThat(folder.resolve(".renaming")).doesNotExist();
      Library library = workspace.library();
      assertThat(library.problems()).isEmpty();
      assertThat(library.linksTo(to)).hasSize(4);
      assertThat(library.page(from)).isEmpty();
    }
  }

  @Test
  void twoPagesInTheWayAreLeftAndSaid() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write("articles/procedures/mended.md", "another's\n");
    workspace.write(".renaming", "kind: procedures\nfrom: mend\nto: mended\n");
    assertThat(new Renamer(workspace.folders()).finish().get(0).toString())
        .contains("mended.md", "is there, and so is");
    assertThat(text("articles/procedures/mended.md")).isEqualTo("another's\n");
    assertThat(new Renamer(workspace.folders()).finish()).isEmpty();
    workspace.write(".renaming", "nonsense\n");
    assertThat(new Renamer(workspace.folders()).finish().get(0).toString()).contains(".renaming");
  }

  /** There and back again over the demo's pages, boats and cases leaves every byte as it was. */
  @Test
  void theDemoIsRenamedThereAndBack() throws IOException {
    copy(Path.of("articles"), folder.resolve("articles"));
    copy(Path.of("demo-boats"), folder.resolve("demo-boats"));
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    Map<Path, String> before = files(folder);
    Library library = new LibraryReader(folders).read();
    for (String id :
        List.of("water-in-forward-cabin", "rebed-deck-fitting", "tarnwick-30", "flooding")) {
      SortedSet<String> links = library.linksTo(id);
      RenameOutcome there = rename(folders, id, id + "-x");
      assertThat(there).as(id).isInstanceOf(RenameOutcome.Renamed.class);
      Workspace read = new WorkspaceReader(folders).read();
      assertThat(read.problems().stream().filter(p -> p.wrong().contains(id))).isEmpty();
      assertThat(read.library().linksTo(id + "-x")).isEqualTo(links);
      assertThat(rename(folders, id + "-x", id)).isInstanceOf(RenameOutcome.Renamed.class);
    }
    assertThat(files(folder)).isEqualTo(before);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.filter(path -> !path.toString().contains("letters")).toList()) {
        Path target = to.resolve(from.relativize(each));
        if (Files.isDirectory(each)) {
          Files.createDirectories(target);
        } else {
          Files.copy(each, target);
        }
      }
    }
  }
}
