package limberboard.moving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import limberboard.library.LibraryReader;
import limberboard.library.NewWorkspace;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.BoatSystem;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportTest {
  private static final String KNOTS = "articles/topics/knots.md";

  @TempDir Path folder;
  private WorkspaceFolders folders;

  @BeforeEach
  void makeWorkspace() throws IOException {
    folders = NewWorkspace.in(folder.resolve("here"));
    write(KNOTS, "---\ntitle: Knots\n---\n");
  }

  private Path write(String path, String text) throws IOException {
    Path file = folders.root().resolve(path);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private static Archive archive(String... pathsAndTexts) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return new Archive(files);
  }

  @Test
  void whatWouldChangeIsSaidAndNothingIsWritten() throws IOException {
    write("articles/topics/mine.md", "---\ntitle: Mine\nown: owner\n---\n");
    write("articles/topics/same.md", "---\ntitle: Same\n---\n");
    Import bringing =
        new Import(
            folders,
            archive(
                KNOTS,
                "---\ntitle: Bends\n---\n",
                "articles/topics/new.md",
                "---\ntitel: New\n---\n",
                "articles/topics/mine.md",
                "---\ntitle: Yours\n---\n",
                "articles/topics/same.md",
                "---\ntitle: Same\n---\n",
                "demo-boats/knot/log.csv",
                "date,work\n"));
    ImportPlan plan = bringing.plan();
    assertThat(plan.added()).containsExactly("articles/topics/new.md", "boats/knot/log.csv");
    assertThat(plan.changed()).containsExactly(KNOTS);
    assertThat(plan.kept()).containsExactly("articles/topics/mine.md");
    assertThat(plan.same()).isEqualTo(1);
    assertThat(plan.problems()).anySatisfy(said -> assertThat(said).contains("new.md:2", "titel"));
    assertThat(folders.root().resolve("articles/topics/new.md")).doesNotExist();
    assertThat(bringing.apply(plan))
        .containsExactly(
            "articles/topics/knots.md", "articles/topics/new.md", "boats/knot/log.csv");
    assertThat(folders.root().resolve(KNOTS)).content().contains("Bends");
    assertThat(folders.root().resolve("articles/topics/mine.md")).content().contains("Mine");
    assertThat(folders.root().resolve(".import")).doesNotExist();
    assertThat(bringing.plan().changesAnything()).isFalse();
  }

  @Test
  void whatHasChangedSinceIsNotOverwritten() throws IOException {
    Import bringing = new Import(folders, archive(KNOTS, "---\ntitle: Bends\n---\n"));
    ImportPlan plan = bringing.plan();
    write(KNOTS, "---\ntitle: Bends\n---\n");
    assertThatThrownBy(() -> bringing.apply(plan)).isInstanceOf(ArchiveTrouble.class);
  }

  @Test
  void anImportThatWasKilledIsFinishedOrHadNotBegun() throws IOException {
    write(".import/files/articles/topics/new.md", "---\ntitle: New\n---\n");
    assertThat(new PendingImport(folders).goOn()).isZero();
    assertThat(folders.root().resolve(".import")).doesNotExist();
    assertThat(folders.root().resolve("articles/topics/new.md")).doesNotExist();
    write(".import/files/articles/topics/new.md", "---\ntitle: New\n---\n");
    write(".import/ready", KNOTS + "\narticles/topics/new.md\n../out.md\n");
    assertThat(new PendingImport(folders).goOn()).isEqualTo(1);
    assertThat(folders.root().resolve("articles/topics/new.md")).content().contains("New");
    assertThat(folders.root().resolve(KNOTS)).content().contains("Knots");
    assertThat(folder.resolve("out.md")).doesNotExist();
  }

  @Test
  void linksOfTheWorkspaceLeadNowhere() throws IOException {
    Path outside = Files.createDirectories(folder.resolve("outside"));
    Files.createSymbolicLink(folders.root().resolve("drills"), outside);
    assertThatThrownBy(() -> new Import(folders, archive("drills/a.yaml", "x")).plan())
        .isInstanceOf(ArchiveTrouble.class)
        .hasMessageContaining("a link or something else");
    assertThat(outside).isEmptyDirectory();
  }

  @Test
  void aPartHasAllThatItRefersToAndOpensWithoutAProblem() throws IOException {
    TestWorkspace test = new TestWorkspace(folder.resolve("test"));
    test.write("boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nbuilt: 2014\n");
    test.write("boats/letters/a.eml", "Subject: a\n\nb\n");
    test.write(
        "articles/procedures/bed.md",
        """
        ---
        title: Bed it
        system: deck
        work: mend
        skill: owner
        minutes: 30
        materials: [{use: sealant, amount: 1 ml}]
        cautions: [flood]
        ---
        """);
    Export export = new Export(test.folders(), test.library());
    Export.Packed part =
        export.pack(new ExportWish(Optional.empty(), Optional.of(BoatSystem.DECK), List.of()));
    assertThat(part.files())
        .isNotEmpty()
        .noneMatch(path -> path.startsWith("boats/"))
        .anyMatch(path -> path.startsWith("articles/procedures/"));
    assertThat(part.added()).containsExactly("flood", "sealant");
    WorkspaceFolders there = NewWorkspace.in(folder.resolve("there"));
    Import bringing = new Import(there, Archive.of(part.bytes()));
    bringing.apply(bringing.plan());
    Map<String, String> said = new TreeMap<>();
    new LibraryReader(there)
        .read()
        .problems()
        .forEach(problem -> said.put(problem.file(), problem.wrong()));
    assertThat(said.values()).noneMatch(wrong -> wrong.contains("no page"));
    assertThatThrownBy(
            () ->
                export.pack(
                    new ExportWish(Optional.empty(), Optional.of(BoatSystem.GAS), List.of())))
        .isInstanceOf(ArchiveTrouble.class);
    Export.Packed whole = export.pack(ExportWish.whole());
    assertThat(whole.files())
        .contains("boats/knot/boat.yaml")
        .noneMatch(path -> path.contains("letters"));
    assertThatThrownBy(
            () -> export.pack(new ExportWish(Optional.of("plovr-20"), Optional.empty(), List.of())))
        .isInstanceOfSatisfying(
            ArchiveTrouble.class,
            trouble -> assertThat(trouble.right()).contains("did you mean \"plover-20\"?"));
  }

  @Test
  void unzipFindsTheArchiveOfTheDemoSoundAndItHoldsEveryPage() throws Exception {
    WorkspaceFolders demo = new WorkspaceFolders(Path.of(""));
    Export.Packed packed =
        new Export(demo, new LibraryReader(demo).read()).pack(ExportWish.whole());
    assertThat(Archive.of(packed.bytes()).files().keySet())
        .containsExactlyElementsOf(packed.files());
    Path file = Files.write(folder.resolve("demo.zip"), packed.bytes());
    Process process;
    try {
      process =
          new ProcessBuilder("unzip", "-tq", file.toString()).redirectErrorStream(true).start();
    } catch (IOException e) {
      Assumptions.abort("unzip is not installed here: not compared with it");
      return;
    }
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).contains("No errors detected");
  }
}
