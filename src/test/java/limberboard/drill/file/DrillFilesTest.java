package limberboard.drill.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.drill.DrillOrder;
import limberboard.drill.StepReader;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.MistakeKind;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillFilesTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);
  private static final DrillRecord DRILL =
      new DrillRecord(
          "wet",
          "a tarnwick-26 of 2019",
          "deck",
          DAY,
          120.5,
          12.3,
          Map.of(MistakeKind.CHECKED_ON, 12.3),
          2,
          List.of(new Certainty(0.7, true, 0.65)));

  @TempDir Path folder;
  private StudentFiles students;

  @BeforeEach
  void makeWorkspace() throws IOException {
    Files.createDirectories(folder.resolve("articles"));
    students = new StudentFiles(new WorkspaceFolders(folder));
  }

  @Test
  void aResultIsReadAsItIsWritten() {
    KeptDrill kept =
        new KeptDrill(
            new DrillOrder("wet", "a tarnwick-26 of 2019", DAY, 123_456_789_012L, 3),
            "012345678901",
            Optional.of("Anna: \"7\" # x"),
            Optional.of("k1"),
            List.of(StepReader.read("check a"), StepReader.read("yard b 60")));
    DrillFiles files = new DrillFiles();
    assertThat(files.read("r.yaml", files.text(kept)).drill()).contains(kept);
  }

  @Test
  void whichCauseIsHiddenStandsInAFileAsItsNumber() {
    DrillOrder order = new DrillOrder("wet", "dunlin", DAY, 7, 0, OptionalInt.of(482_913));
    KeptDrill kept =
        new KeptDrill(order, "012345678901", Optional.empty(), Optional.empty(), List.of());
    DrillFiles files = new DrillFiles();
    assertThat(files.text(kept)).contains("hides: 482913");
    assertThat(files.read("r.yaml", files.text(kept)).drill()).contains(kept);
    String bad = files.text(kept).replace("482913", "bowsprit-seal");
    assertThat(files.read("r.yaml", bad).problems().get(0).toString())
        .contains("r.yaml:5", "\"bowsprit-seal\" is no number of six digits");
  }

  @Test
  void whatIsWrongInAResultIsSaidWithItsLine() {
    String text = "symptom: wet\nboat: b\non: 2026-03-01\nseed: 1\nstamp: abc\nsteps:\n- chek a\n";
    DrillFiles.Read read = new DrillFiles().read("r.yaml", text);
    assertThat(read.drill()).isEmpty();
    assertThat(read.problems().get(0).toString())
        .contains("r.yaml:6")
        .contains("step 1")
        .contains("\"chek a\" is no step");
    String seed = text.replace("seed: 1", "seed: -1").replace("chek", "check");
    assertThat(new DrillFiles().read("r.yaml", seed).problems().get(0).toString())
        .contains("r.yaml:4")
        .contains("no whole number");
    String without = text.replace("stamp: abc\n", "");
    assertThat(new DrillFiles().read("r.yaml", without).problems()).isNotEmpty();
  }

  @Test
  void aStudentsDrillsAreKeptAndNotShared() throws IOException {
    assertThat(students.read("Anna").student()).isEmpty();
    students.add("Anna", DRILL, 7);
    StudentFiles.Read read = students.add("Anna", DRILL, 8);
    assertThat(read.problems()).isEmpty();
    StudentFiles.Student anna = students.read("Anna").student().orElseThrow();
    assertThat(anna.progress().drills()).containsExactly(DRILL, DRILL);
    assertThat(anna.key()).startsWith("k").isEqualTo(read.student().orElseThrow().key());
    assertThat(Files.readString(students.folder().resolve(".gitignore"))).isEqualTo("*\n");
    assertThat(students.all()).hasSize(1);
  }

  @Test
  void whatSomebodyWroteByHandStaysToTheLetter() throws IOException {
    students.add("Anna", DRILL, 7);
    Path file = students.file("Anna");
    String before = Files.readString(file).replace("drills:", "# good with her hands\ndrills:");
    Files.writeString(file, before);
    assertThat(students.add("Anna", DRILL, 8).problems()).isEmpty();
    assertThat(Files.readString(file)).startsWith(before);
  }

  @Test
  void aFileThatCannotBeReadIsLeftAsItIs() throws IOException {
    students.add("Anna", DRILL, 7);
    Path file = students.file("Anna");
    String broken = Files.readString(file).replace("checked-on", "slept");
    Files.writeString(file, broken);
    assertThat(students.add("Anna", DRILL, 8).problems().get(0).toString())
        .contains("anna.yaml")
        .contains("\"slept\" is no kind of mistake");
    assertThat(Files.readString(file)).isEqualTo(broken);
    String ended = Files.readString(file).replace("slept", "checked-on") + "note: at the end\n";
    Files.writeString(file, ended);
    assertThat(students.add("Anna", DRILL, 8).problems()).isNotEmpty();
    assertThat(Files.readString(file)).isEqualTo(ended);
  }

  @Test
  void namesThatShareAFileAreToldApart() {
    students.add("Anna B", DRILL, 7);
    StudentFiles.Read other = students.add("anna-b", DRILL, 7);
    assertThat(other.student()).isEmpty();
    assertThat(other.problems().get(0).toString()).contains("belongs to “Anna B”");
    assertThat(students.read("Anna B").student().orElseThrow().progress().drills()).hasSize(1);
  }
}
