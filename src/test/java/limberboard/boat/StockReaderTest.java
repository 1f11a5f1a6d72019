package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.library.value.KnownUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A boat's stock: what is broken is named with its line, the rest is read. */
class StockReaderTest {
  private static final String HEADER = "material,left,opened,best-before,note\n";

  @TempDir private Path root;
  private WorkspaceFolders folders;

  @BeforeEach
  void pages() throws IOException {
    page("sealant", "title: Sealant\ngroup: sealant\nunit: ml\n");
    page("cord", "title: Cord\ngroup: cordage\nunit: m\n");
    page("anode", "title: Anode\ngroup: anode\nunit: piece\n");
    page("spanner", "title: Spanner\ngroup: tool\n");
    folders = new WorkspaceFolders(root);
  }

  private void page(String id, String header) throws IOException {
    Path file = root.resolve("articles/materials/" + id + ".md");
    Files.createDirectories(file.getParent());
    Files.writeString(file, "---\n" + header + "---\n");
  }

  private StockReader.Read read(String text) throws IOException {
    Path file = root.resolve("boats/avocet/stock.csv");
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    Library library = new limberboard.library.LibraryReader(folders).read();
    return new StockReader(folders, library).read(file);
  }

  @Test
  void readsQuantitiesInAnyFittingUnitAndDates() throws IOException {
    StockReader.Read read =
        read(HEADER + "sealant,0.29 l,2026-02-28,2027-01-31,\"cool, dry\"\nanode,2,,,\n");
    assertThat(read.problems()).isEmpty();
    StockItem sealant = read.stock().items().get(0);
    assertThat(KnownUnit.MILLILITRE.of(sealant.left()).orElseThrow()).isEqualTo(290);
    assertThat(sealant.opened()).contains(LocalDate.of(2026, 2, 28));
    assertThat(sealant.note()).isEqualTo("cool, dry");
    assertThat(read.stock().items().get(1).opened()).isEmpty();
  }

  @Test
  void namesWhatIsBrokenWithItsLineAndReadsTheRest() throws IOException {
    StockReader.Read read =
        read(
            HEADER
                + "sealent,100 ml,,,\n"
                + "spanner,1,,,\n"
                + "sealant,100 g,,,\n"
                + "anode,2 m,,,\n"
                + "sealant,-5 ml,,,\n"
                + "sealant,a little,,,\n"
                + "sealant,5 ml,2026-02-30,,\n"
                + "sealant,5 ml,,31.12.2027,\n"
                + "sealant,5 ml,,\n"
                + "cord,3 m,,,\n");
    assertThat(read.stock().items()).singleElement().extracting(StockItem::left).isNotNull();
    assertThat(read.problems())
        .extracting(Problem::line)
        .containsExactlyInAnyOrder(2, 3, 4, 5, 6, 7, 8, 9, 10);
    assertThat(read.problems().stream().map(Problem::toString).toList())
        .contains(
            "boats/avocet/stock.csv:2: material: there is no material \"sealent\"; did you mean"
                + " \"sealant\"?",
            "boats/avocet/stock.csv:4: left: 100 g cannot be counted in ml; write what is left in"
                + " ml",
            "boats/avocet/stock.csv:8: opened: \"2026-02-30\" is no date of the calendar; write it"
                + " as 2026-05-01");
  }

  @Test
  void hostileFilesAreProblemsAndNotFailures() throws IOException {
    for (String text :
        List.of(
            "",
            "\n\n\n",
            "left,material\n1,anode\n",
            HEADER + "\"never closed,1,,,\n",
            HEADER + "anode," + "9".repeat(400) + ",,,\n",
            "\u0000",
            HEADER + "anode,1,+999999999-13-45,,\n",
            HEADER + ",,,,\n",
            HEADER + "\"a\"b,c\n",
            "material,material,left,opened,best-before,note\nanode,anode,1,,,\n")) {
      StockReader.Read read = read(text);
      assertThat(read.problems()).as(text).isNotEmpty();
      assertThat(read.stock().items()).as(text).isEmpty();
    }
  }
}
