package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.cli.TerminalRun.Ran;
import limberboard.rigging.Rigs;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RiggingCommandTest {
  private static final String ROPES =
      "  - {id: main, title: 'Main \"big\" halyard, white', group: halyard, length: {P: 2}, count:"
          + " 2, construction: hmpe-core, load: {by: mainsail, beaufort: 6}, least: {clutch: 8 mm},"
          + " ends: [eye-splice, whipping]}\n"
          + "  - {id: jib, title: Jib halyard, group: halyard, length: {I: 1, J: 1}, construction:"
          + " hmpe-core, diameter: 8 mm}\n";

  @TempDir Path folder;

  private String out = "";

  private int run(String... words) {
    Ran ran = new TerminalRun(folder, LocalDate.of(2026, 4, 1)).run(words);
    out = ran.all();
    return ran.code();
  }

  private void boat() {
    Rigs.of(folder, "{P: 10.70 m, E: 4.05 m, I: 9 m}", ROPES);
  }

  @Test
  void theTableIsReadBackAsItWas() throws IOException {
    boat();
    assertThat(run("rigging", "--boat", "teal", "--csv", "ropes.csv")).isEqualTo(ExitCode.OK);
    String csv = Files.readString(folder.resolve("ropes.csv"));
    assertThat(csv).endsWith("\r\n");
    List<CSVRecord> rows =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(csv))
            .getRecords();
    assertThat(rows).hasSize(2);
    CSVRecord main = rows.get(0);
    assertThat(main.get("rope")).isEqualTo("Main \"big\" halyard, white");
    assertThat(main.get("cut-m")).isEqualTo("21.5");
    assertThat(main.get("total-m")).isEqualTo("43");
    assertThat(main.get("diameter-mm")).isEqualTo("8");
    assertThat(main.get("ends")).isEqualTo("eye-splice whipping");
    assertThat(main.get("material")).isEqualTo("halyard");
    CSVRecord jib = rows.get(1);
    assertThat(jib.get("cut-m")).isEmpty();
    assertThat(jib.get("open")).isEqualTo("the page of the Sloop gives no J: measure it");
  }

  @Test
  void everyKeyOfTheJsonAndEveryColumnIsDocumented() throws IOException {
    boat();
    assertThat(run("rigging", "--boat", "teal", "--json")).isEqualTo(ExitCode.OK);
    JsonNode json = JsonMapper.builder().build().readTree(out);
    String documented = Files.readString(Path.of("docs/terminal.md"));
    List<String> keys = new ArrayList<>();
    json.fieldNames().forEachRemaining(keys::add);
    json.get("ropes").get(0).fieldNames().forEachRemaining(keys::add);
    json.get("totals").get(0).fieldNames().forEachRemaining(keys::add);
    assertThat(keys).hasSizeGreaterThan(25);
    assertThat(keys).allSatisfy(key -> assertThat(documented).contains("\"" + key + "\""));
    run("rigging", "--boat", "teal", "--csv", "ropes.csv");
    String head = Files.readString(folder.resolve("ropes.csv")).lines().findFirst().orElseThrow();
    assertThat(documented).contains(head.replace(",", ", "));
    assertThat(json.get("ropes").get(1).get("missing").get(0).asText()).isEqualTo("J");
    assertThat(json.get("ropes").get(1).get("cutMetres").isNull()).isTrue();
  }

  @Test
  void asTextAndAsPaper() throws IOException {
    boat();
    assertThat(run("rigging", "--boat", "teal")).isEqualTo(ExitCode.OK);
    assertThat(out).contains("To buy").contains("2 × 21.5 m");
    assertThat(run("rigging", "--boat", "teal", "--pdf", "ropes.pdf")).isEqualTo(ExitCode.OK);
    assertThat(Files.readAllBytes(folder.resolve("ropes.pdf"))).startsWith('%', 'P', 'D', 'F');
  }

  @Test
  void withoutABoatOrToAFolderThatIsNotThere() {
    boat();
    assertThat(run("rigging")).isEqualTo(ExitCode.USAGE);
    assertThat(out).contains("--boat");
    assertThat(run("rigging", "--boat", "tael")).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(out).contains("teal");
    assertThat(run("rigging", "--boat", "teal", "--csv", "boats/teal/boat.yaml/ropes.csv"))
        .isEqualTo(ExitCode.IO);
  }
}
