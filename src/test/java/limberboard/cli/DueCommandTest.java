package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import limberboard.cli.TerminalRun.Ran;
import limberboard.desktop.support.SmallWorkspace;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DueCommandTest {
  @TempDir Path folder;
  private String out = "";
  private String err = "";

  @BeforeEach
  void workspace() {
    SmallWorkspace.copyTo(folder);
  }

  private int run(String... words) {
    Ran ran = new TerminalRun(folder, SmallWorkspace.TODAY).run(words);
    out = ran.out();
    err = ran.err();
    return ran.code();
  }

  @Test
  void theTableIsReadBackAsItWas() throws IOException {
    assertThat(run("due", "--csv", "due.csv", "--on", "2029-06-01")).isEqualTo(ExitCode.OK);
    assertThat(out).isEmpty();
    assertThat(err).startsWith("Written: ").contains("due.csv");
    String text = Files.readString(folder.resolve("due.csv"));
    assertThat(text).endsWith("\r\n");
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(text))
            .getRecords();
    CSVRecord knot =
        rows.stream().filter(row -> row.get("boat").equals("knot")).findFirst().orElseThrow();
    assertThat(knot.get("id")).isEqualTo("replace-gasket");
    assertThat(knot.get("title")).isEqualTo("Replace the locker gasket");
    assertThat(knot.get("group")).isEqualTo("overdue");
    assertThat(knot.get("runs-out")).isEqualTo("2028-04-10");
    assertThat(knot.get("minutes")).isEqualTo("40");
    assertThat(knot.get("why")).isEqualTo("4 years since 2024-04-10");
    assertThat(rows).extracting(row -> row.get("boat")).contains("stint");
  }

  @Test
  void theTimeLineIsDrawnAndTheSheetPutOnPaper() throws IOException {
    assertThat(run("due", "--boat", "knot", "--svg", "due.svg", "--pdf", "due.pdf"))
        .isEqualTo(ExitCode.OK);
    assertThat(Files.readString(folder.resolve("due.svg")))
        .startsWith("<svg")
        .contains("Replace the locker gasket");
    assertThat(Files.readAllBytes(folder.resolve("due.pdf"))).startsWith('%', 'P', 'D', 'F');
  }

  @Test
  void withJsonOnlyJsonIsPrinted() {
    assertThat(run("due", "--boat", "knot", "--csv", "due.csv", "--json")).isEqualTo(ExitCode.OK);
    assertThat(out.strip()).startsWith("{").endsWith("}");
    assertThat(err).contains("due.csv");
  }

  @Test
  void aSheetIsForOneBoat() {
    assertThat(run("due", "--pdf", "due.pdf")).isEqualTo(ExitCode.USAGE);
    assertThat(err).contains("--boat");
    assertThat(folder.resolve("due.pdf")).doesNotExist();
  }

  @Test
  void aFileThatCannotBeWrittenIsSaid() throws IOException {
    Files.writeString(folder.resolve("plain"), "not a folder");
    assertThat(run("due", "--boat", "knot", "--csv", "plain/due.csv")).isEqualTo(ExitCode.IO);
    assertThat(err).contains("could not be written");
  }
}
