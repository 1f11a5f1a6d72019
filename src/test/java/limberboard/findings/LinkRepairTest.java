package limberboard.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A link that leads nowhere is mended in one step only where one page alone can be meant. */
class LinkRepairTest {
  @TempDir Path folder;
  private WorkspaceFolders folders;
  private Path knots;

  @BeforeEach
  void begin() throws IOException {
    folders = NewWorkspace.in(folder);
    knots = folders.articles().resolve("topics/knots.md");
    page("topics/bowlines.md", "title: Bowlines");
    page(
        "cautions/old-rope.md",
        "title: Old rope\n"
            + "danger: It parts.\n"
            + "short: {danger: It parts., rule: Stand clear.}\n"
            + "do: [Stand clear.]");
  }

  private void page(String file, String header) throws IOException {
    Files.writeString(folders.articles().resolve(file), "---\n" + header + "\n---\nText.\n");
  }

  private List<LinkRepair> repairs(String text) throws IOException {
    Files.writeString(knots, text);
    Library library = new LibraryReader(folders).read();
    assertThat(library.problems()).isNotEmpty();
    return library.problems().stream()
        .map(problem -> LinkRepair.of(problem, library))
        .flatMap(Optional::stream)
        .toList();
  }

  @Test
  void aLinkOneLetterOffIsMendedAndAllElseStaysToTheLetter() throws IOException {
    String text = "---\r\ntitle: Knots # a remark\r\n---\r\nSee [one](bowlins.md#use) twice.\r\n";
    List<LinkRepair> found = repairs(text);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).words())
        .isEqualTo(
            "“bowlins.md#use” becomes “bowlines.md#use” in line 4 of articles/topics/knots.md.");
    assertThat(found.get(0).make(folders)).isEmpty();
    assertThat(Files.readString(knots)).isEqualTo(text.replace("bowlins", "bowlines"));
  }

  @Test
  void aLinkToAPageOfAnotherFolderIsMended() throws IOException {
    List<LinkRepair> found = repairs("---\ntitle: Knots\n---\nSee [it](old-rope.md).\n");
    assertThat(found).extracting(LinkRepair::now).containsExactly("../cautions/old-rope.md");
  }

  @Test
  void aNameInTheHeaderIsMended() throws IOException {
    Path work = folders.articles().resolve("procedures/tie-up.md");
    Files.writeString(
        work,
        "---\ntitle: Tie up\nsummary: Tie.\nsystem: rig\nwork: inspect\nskill: owner\nminutes: 5\n"
            + "cautions: [old-rops]\n---\n1. Tie.\n");
    List<LinkRepair> found = repairs("---\ntitle: Knots\n---\nText.\n");
    assertThat(found).extracting(LinkRepair::now).containsExactly("old-rope");
    assertThat(found.get(0).make(folders)).isEmpty();
    assertThat(Files.readString(work)).contains("cautions: [old-rope]");
  }

  @Test
  void nothingIsOfferedWhereTwoPagesCanBeMeant() throws IOException {
    page("topics/bowlinex.md", "title: Another");
    assertThat(repairs("---\ntitle: Knots\n---\nSee [one](bowline.md).\n")).isEmpty();
  }

  @Test
  void nothingIsOfferedWhereNoneIsNear() throws IOException {
    assertThat(repairs("---\ntitle: Knots\n---\nSee [one](sheet-bends.md).\n")).isEmpty();
  }

  @Test
  void aLineThatHasChangedMeanwhileIsLeft() throws IOException {
    LinkRepair repair = repairs("---\ntitle: Knots\n---\nSee [one](bowlins.md).\n").get(0);
    Files.writeString(knots, "---\ntitle: Knots\n---\nSee [one](xbowlins.md).\n");
    Optional<Problem> wrong = repair.make(folders);
    assertThat(wrong).isPresent();
    assertThat(Files.readString(knots)).contains("xbowlins.md");
  }
}
